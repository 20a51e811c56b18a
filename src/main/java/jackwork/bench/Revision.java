package jackwork.bench;

import java.time.Instant;
import java.util.SortedMap;

/**
 * A state of a design, frozen.
 *
 * @param title as its design.yaml says
 * @param fingerprint the same for the same files only
 * @param files SHA-256 by path from the workshop's folder
 */
public record Revision(
        RevisionName name,
        String title,
        Instant at,
        String note,
        String fingerprint,
        SortedMap<String, String> files) {}
