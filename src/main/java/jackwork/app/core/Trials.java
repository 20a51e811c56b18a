package jackwork.app.core;

import jackwork.app.wire.StaleException;
import jackwork.app.wire.TooLongException;
import jackwork.design.Design;
import jackwork.design.DesignException;
import jackwork.design.DesignFiles;
import jackwork.design.DesignReader;
import jackwork.design.WorkshopReader;
import jackwork.make.MakeException;
import jackwork.motion.model.MechanismException;
import jackwork.parts.PartException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.stream.Collectors;

/** Tries whole what would become of designs, before anything is saved: what is saved can be shown. */
public final class Trials {

    /** How it is told that a change was not made for the sake of another design. */
    private static final String LEFT = "left as it was: ";

    private final Workbench workbench;

    /** Whether another design, as it is now, stands other texts. */
    private interface Trial {

        void of(String id, Design now, Map<Path, String> changed);
    }

    public Trials(Workbench workbench) {
        this.workbench = workbench;
    }

    /**
     * A design as it would be.
     *
     * @param changed texts that would be other ones, by path
     * @throws DesignException when it could not be used any more, and as {@link Shown#of} says
     */
    Shown of(String id, Map<Path, String> changed) {
        Design would = DesignReader.read(workbench.folder().resolve(id), changed);
        return workbench.shown(id, would);
    }

    /**
     * Tries every other design that stands on one of these files; what could be shown so far must still be.
     *
     * @param but a design that was tried already; empty for none
     * @return the states that were tried, to be held against what stands there when it is saved
     * @throws DesignException when one could not be shown any more
     */
    public Tried others(String but, Map<Path, String> changed) {
        return others(but, changed, (id, now, texts) -> of(id, texts));
    }

    /**
     * The same where somebody decided on the change for one design alone: none of the others may fail from then on that
     * did not before.
     *
     * @throws DesignException when one could not be shown any more, or would fail
     */
    Tried othersAsGood(String but, Map<Path, String> changed) {
        return others(but, changed, (id, now, texts) -> {
            Shown next = of(id, texts);
            if (next.check().fails() && !workbench.shown(id, now).check().fails()) {
                throw DesignException.of(
                        names(changed),
                        LEFT + workbench.name(id) + " does not fail now and would then, since \""
                                + next.check().findings().get(0).question() + "\" is answered: "
                                + next.check().findings().get(0).why() + ". " + remedy(id, changed));
            }
        });
    }

    /** The same where nothing changes that designs are worked out with: they need only be read. */
    public Tried othersRead(Map<Path, String> changed) {
        return others(
                "",
                changed,
                (id, now, texts) -> DesignReader.read(workbench.folder().resolve(id), texts));
    }

    private Tried others(String but, Map<Path, String> changed, Trial trial) {
        Map<String, String> versions = new LinkedHashMap<>();
        for (String id : workbench.ids()) {
            if (id.equals(but)) {
                continue;
            }
            Design now;
            try {
                now = workbench.design(id);
            } catch (DesignException e) {
                continue; // it could not be shown before either
            }
            DesignFiles files = DesignFiles.of(now);
            if (files.all().stream().anyMatch(changed::containsKey)) {
                versions.put(id, now.version());
                requireShown(id, now, changed, trial);
            }
        }
        return new Tried(workbench, versions);
    }

    private void requireShown(String id, Design now, Map<Path, String> changed, Trial trial) {
        try {
            trial.of(id, now, changed);
        } catch (TooLongException | CancellationException e) {
            throw e;
        } catch (RuntimeException e) {
            if (!isShown(id, now)) {
                return;
            } else if (!isMakers(e)) {
                throw e;
            }
            if (e instanceof DesignException told
                    && String.valueOf(told.getMessage()).contains(LEFT)) {
                throw e;
            }
            throw DesignException.of(
                    names(changed),
                    LEFT + workbench.name(id) + " could not be shown any more. " + e.getMessage() + ". "
                            + remedy(id, changed));
        }
    }

    private static String names(Map<Path, String> changed) {
        return changed.keySet().stream()
                .map(path -> String.valueOf(path.getFileName()))
                .collect(Collectors.joining(", "));
    }

    /** What is written into a file that others stand on holds for them as well; the workshop is always everybody's. */
    private String remedy(String id, Map<Path, String> changed) {
        if (changed.keySet().stream().anyMatch(path -> path.endsWith(WorkshopReader.FILE))) {
            return "The workshop's numbers hold for every design";
        }
        return workbench.name(id) + " stands on the same file. Give this design a copy of " + names(changed)
                + " and name the copy in its design.yaml, or write the change by hand into each design that stands on it";
    }

    private boolean isShown(String id, Design now) {
        try {
            workbench.shown(id, now);
            return true;
        } catch (TooLongException | CancellationException e) {
            throw e;
        } catch (RuntimeException e) {
            return false;
        }
    }

    /** Whether it is the maker's files that are complained of, in words; else it is our own fault. */
    static boolean isMakers(RuntimeException e) {
        return e instanceof DesignException
                || e instanceof MechanismException
                || e instanceof PartException
                || e instanceof MakeException;
    }

    /** @param versions of the files of each design that was tried, before */
    public record Tried(Workbench workbench, Map<String, String> versions) {

        /** Asked when it is this program's turn to write: what another has changed since was not tried. */
        public void requireFresh() {
            versions.forEach((id, version) -> {
                if (!workbench.design(id).version().equals(version)) {
                    throw new StaleException();
                }
            });
        }
    }
}
