package jackwork.design;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * What a number of a file may be. Outside {@link #least} to {@link #most} it is refused on reading; outside what is usual it is
 * read, and a finding says so. The unit is that of a bare number; the file may also say it ({@code 0.5 in}, {@code 14 deg}).
 */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT, ElementType.FIELD, ElementType.METHOD})
@interface Quantity {

    /** mm, deg, g, N, mm/s, ..., or 1 for a pure number. */
    String unit() default "1";

    double least();

    double most();

    /** From which on it is usual; {@link #least} when not said. */
    double usualFrom() default Double.NaN;

    /** Up to which it is usual; {@link #most} when not said. */
    double usualTo() default Double.NaN;

    /**
     * How wide an interval about it usually is at most, from end to end, as a share of {@link IntervalWidth}'s scale. The catalogue's
     * widest, a friction's, is 1.3: common practice, no source.
     */
    double usualSpread() default 1.6;

    /** An interval wider than this share is refused: it says nothing of the number. Common practice, no source. */
    double mostSpread() default 3.2;

    /** What these bounds rest on, in one clause, as it is told to the maker. */
    String why();
}
