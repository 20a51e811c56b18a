package jackwork.drawing;

/**
 * One path of a sheet, exactly where the tool's centre goes: kerf and fit are already in it.
 *
 * @param id unique in its sheet; empty when it needs no name
 */
public record CutPath(CutKind kind, CutShape shape, String id) {}
