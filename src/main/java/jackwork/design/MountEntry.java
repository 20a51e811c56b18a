package jackwork.design;

import java.util.List;
import org.jspecify.annotations.Nullable;

@About("A hole by which figure and box are joined; both name it alike.")
public record MountEntry(
        @About("The parts that have this hole.") @Names(value = NameKind.PART, whose = Names.Whose.OWN)
        List<String> parts,

        @About("The rod through it.") @Names(NameKind.ROD) String rod,

        @About("Where; the circle with the mount's own name when left out.") @OwnCircle @Nullable
        Place at)
        implements Entry {}
