package jackwork.design;

/** A joint other than pin, slide and stop, as it is written. Its {@link JointKind} says what is made of it. */
public interface JointEntry extends Entry {}
