package jackwork.design;

/**
 * @param on the part
 * @param moment N·mm, counter-clockwise positive
 */
@About("A steady torque on a part, such as a clockwork's.")
public record TorqueEntry(String on, @Unit("N mm") double moment) {}
