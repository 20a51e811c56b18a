package jackwork.check;

/** A question of the coin's weight: not asked where the coin bridges a gap instead. */
interface OfWeight extends Question {

    @Override
    default boolean appliesTo(Subject subject) {
        return !subject.assembly().coinWorks().bridges();
    }
}
