package jackwork.motion.time;

/**
 * A visitor's press.
 *
 * @param force most that the finger pushes, N
 * @param speed of the press point that the finger does not outrun, mm/s
 */
public record Press(double force, double speed) {}
