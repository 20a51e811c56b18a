package jackwork;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Says in a maker's words what a benchmark class measures and what it is held against. Such a class has
 * one {@code @Benchmark} method {@code ours} and, where there is a peer, one {@code peer}.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
public @interface Compared {

    /** What one operation is. */
    String what();

    /** What the peer is, and what it leaves out; empty without one. */
    String peer() default "";

    /** What one operation may take on two cores, µs; 0 without an aim. */
    double aim() default 0;

    /** The parameter that a curve of growth is drawn over, a number; empty without one. */
    String grows() default "";
}
