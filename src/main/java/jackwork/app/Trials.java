package jackwork.app;

import jackwork.design.Design;
import jackwork.design.DesignException;
import jackwork.design.DesignFiles;
import jackwork.design.DesignReader;
import jackwork.make.MakeException;
import jackwork.motion.MechanismException;
import jackwork.parts.PartException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;

/** Tries whole what would become of designs, before anything is saved: what is saved can be shown. */
final class Trials {

    private final Workbench workbench;

    Trials(Workbench workbench) {
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
        return workbench.shown(id, would, DesignFiles.of(would).version(changed));
    }

    /**
     * Tries every other design that stands on one of these files; what could be shown so far must still be.
     *
     * @param but a design that was tried already; empty for none
     * @return the states that were tried, to be held against what stands there when it is saved
     * @throws DesignException when one could not be shown any more
     */
    Tried others(String but, Map<Path, String> changed) {
        return others(but, changed, this::of);
    }

    /** The same where nothing changes that designs are worked out with: they need only be read. */
    Tried othersRead(Map<Path, String> changed) {
        return others(
                "", changed, (id, texts) -> DesignReader.read(workbench.folder().resolve(id), texts));
    }

    private Tried others(String but, Map<Path, String> changed, BiConsumer<String, Map<Path, String>> trial) {
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
                versions.put(id, files.version());
                requireShown(id, now, changed, trial);
            }
        }
        return new Tried(workbench, versions);
    }

    private void requireShown(
            String id, Design now, Map<Path, String> changed, BiConsumer<String, Map<Path, String>> trial) {
        try {
            trial.accept(id, changed);
        } catch (TooLongException | CancellationException e) {
            throw e;
        } catch (RuntimeException e) {
            if (!isShown(id, now)) {
                return;
            } else if (!isMakers(e)) {
                throw e;
            }
            String about = changed.keySet().stream()
                    .map(path -> String.valueOf(path.getFileName()))
                    .collect(Collectors.joining(", "));
            throw DesignException.of(
                    about, "left as it was: " + workbench.name(id) + " could not be shown any more. " + e.getMessage());
        }
    }

    private boolean isShown(String id, Design now) {
        try {
            workbench.shown(id, now, DesignFiles.of(now).version());
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
    record Tried(Workbench workbench, Map<String, String> versions) {

        /** Asked when it is this program's turn to write: what another has changed since was not tried. */
        void requireFresh() {
            versions.forEach((id, version) -> {
                if (!DesignFiles.of(workbench.design(id)).version().equals(version)) {
                    throw new StaleException();
                }
            });
        }
    }
}
