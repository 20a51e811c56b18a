package jackwork.design;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** The word is the name of something else; of a map, its keys are. */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT, ElementType.FIELD, ElementType.METHOD})
@interface Names {

    NameKind value();

    Whose whose() default Whose.ANY;

    /** Whether {@code box}, all that never moves, may stand there too. */
    boolean orGround() default false;

    /** Whether the named part's outline is made from this entry, so that it needs none in the drawing. */
    boolean shapes() default false;

    /** In which files the named thing may be. */
    enum Whose {
        /** In the same file, or, from a figure, in its box. */
        ANY,
        /** In the same file alone. */
        OWN,
        /** In the box. */
        BOX
    }
}
