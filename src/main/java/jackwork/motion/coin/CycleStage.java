package jackwork.motion.coin;

/** What must happen, in order, from the coin in the slot to the lever locked again. */
public enum CycleStage {
    /** The coin comes to lie where it works: on the bucket, or before the gate. */
    LANDS,
    /** The bucket's strut leaves the lever's tooth free. */
    FREES,
    /** The finger brings the lever down all the way, and the figure with it. */
    ACTS,
    /** The coin leaves the bucket and falls into the box. */
    THROWN,
    /** Let go, the lever comes back to rest. */
    RETURNS,
    /** The bucket's strut stands beneath the tooth again. */
    LOCKS,
    /** A second press without a coin is held. */
    REFUSES
}
