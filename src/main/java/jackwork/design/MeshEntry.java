package jackwork.design;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * @param between two gears; the module follows from their distance and teeth
 * @param pressureAngle degrees; 20 when absent
 * @param play taken off each tooth, mm; 0.1 when absent
 */
@About("Two gears whose teeth run in each other.")
public record MeshEntry(
        List<String> between,
        @Unit("deg") @Nullable Double pressureAngle,
        @Unit("mm") @Nullable Double play) {}
