package jackwork.layout;

import jackwork.geometry.Outline;
import java.util.List;

/**
 * Something to be laid out, once.
 *
 * @param name for messages
 * @param outline with its openings, mm; clearance already in it
 * @param turns allowed, degrees; empty when it may lie at any angle
 */
public record Piece(String name, Outline outline, List<Double> turns) {
    public Piece {
        turns = List.copyOf(turns);
    }
}
