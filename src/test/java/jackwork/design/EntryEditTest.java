package jackwork.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Entries taken out and renamed: what else goes, or is called otherwise, is told by what a word is, not by its spelling. */
@Tag("quick")
class EntryEditTest {

    private final Design heron = DesignReader.read(Path.of("demo", "heron"));
    private final DesignFiles files = DesignFiles.of(heron);
    private final Map<Path, String> texts = files.texts();

    private Design read() {
        return DesignReader.readLike(heron, texts);
    }

    private void rename(String path, String other) {
        EntryEdit.rename(read(), files, texts, path, other);
    }

    private void remove(String path) {
        EntryEdit.remove(read(), files, texts, path);
    }

    @Test
    void aPinThatIsCalledAsAPartGoesAlone() {
        rename("figure.pins.wing-dowel-2", "wing-near");
        Works before = read().figure().works();
        assertThat(before.pins()).containsKey("wing-near").doesNotContainKey("wing-dowel-2");
        remove("figure.pins.wing-near");
        Works after = read().figure().works();
        assertThat(after.pins().keySet()).doesNotContain("wing-near");
        assertThat(after.pins().get("wing-dowel-1")).isEqualTo(before.pins().get("wing-dowel-1"));
        assertThat(after.parts()).isEqualTo(before.parts());
    }

    @Test
    void aFreeTextThatReadsAsAPartsNameNamesNothing() {
        String box = Objects.requireNonNull(texts.get(files.box()));
        texts.put(files.box(), box.replace("printed: chute}", "printed: kicker}"));
        Works before = read().box().works();
        assertThat(before.parts().get("chute-left").printed()).isEqualTo("kicker");
        rename("box.parts.kicker", "thrower");
        Works after = read().box().works();
        assertThat(after.parts().get("chute-left").printed()).isEqualTo("kicker");
        assertThat(after.glued().get(0)).contains("thrower").doesNotContain("kicker");
        assertThat(after.pins().get("lever-pivot").parts()).contains("thrower").doesNotContain("kicker");
    }

    @Test
    void aRenamedPartIsFoundInTheDrawingAndWhereverItIsNamed() {
        rename("figure.parts.head", "crown");
        Design now = read();
        assertThat(now.figure().works().parts().get("crown").drawn()).isEqualTo("head");
        assertThat(now.file().gestures().values())
                .noneMatch(gesture -> gesture.part().equals("head"));
        assertThat(now.file().gestures().values())
                .anyMatch(gesture -> gesture.part().equals("crown"));
        assertThat(now.figure().works().pictures()).containsKey("crown").doesNotContainKey("head");
        rename("figure.parts.crown", "head");
        assertThat(read().figure().works().pictures())
                .isEqualTo(heron.figure().works().pictures());
    }

    @Test
    void aRenamedPinStaysWhereItIsAndItsChangesFollow() {
        String design = Objects.requireNonNull(texts.get(files.design()));
        texts.put(files.design(), DesignEdit.with(design, "figure.pins.hip.shoulder", "6"));
        rename("figure.pins.hip", "hinge");
        Design now = read();
        PinEntry hinge = Objects.requireNonNull(now.figure().works().pins().get("hinge"));
        assertThat(now.inFigure(hinge.at(), "hinge"))
                .isEqualTo(
                        heron.inFigure(heron.figure().works().pins().get("hip").at(), "hip"));
        assertThat(hinge.shoulder()).isEqualTo(6);
        assertThat(now.figure().works().stops().values())
                .noneMatch(stop -> stop.pin().equals("hip"));
    }

    @Test
    void anAdjusterFollowsWhatItChangesAndGoesWithIt() {
        rename("figure.weights.tail", "steel");
        assertThat(read().file().adjusters().get("tail").number()).isEqualTo("figure.weights.steel.mass");
        remove("figure.weights.steel");
        assertThat(read().file().adjusters()).isEmpty();
    }

    @Test
    void aMountIsRenamedOnBothSides() {
        rename("box.mounts.mount-left", "foot");
        assertThat(read().box().works().mounts()).containsKey("foot");
        assertThat(read().figure().works().mounts()).containsKey("foot");
    }

    @Test
    void whatTheBoxCannotBeWithoutStays() {
        Map<Path, String> before = Map.copyOf(texts);
        assertThatThrownBy(() -> remove("box.pins.lever-pivot"))
                .isInstanceOf(DesignException.class)
                .hasMessageContaining("box.lever.pin")
                .hasMessageContaining("name another one there first");
        assertThatThrownBy(() -> remove("box.parts.lever")).isInstanceOf(DesignException.class);
        assertThat(texts).isEqualTo(before);
    }

    @Test
    void aNameThatIsTakenIsRefused() {
        for (String[] taken : List.of(
                new String[] {"figure.parts.head", "body"},
                new String[] {"figure.parts.head", "kicker"},
                new String[] {"figure.pins.hip", "lever-pivot"},
                new String[] {"figure.pins.hip", "knee"})) {
            assertThatThrownBy(() -> rename(taken[0], taken[1]))
                    .isInstanceOf(DesignException.class)
                    .hasMessageContaining("choose another name");
        }
        assertThatThrownBy(() -> rename("figure.pins.hip", "Hip!")).hasMessageContaining("cannot be a name");
        assertThatThrownBy(() -> rename("figure.parts.head", "box")).hasMessageContaining("cannot be a name");
        assertThatThrownBy(() -> remove("figure.pins.hipp")).hasMessageContaining("no such entry to take out");
        assertThatThrownBy(() -> rename("figure.pins.hipp", "hop")).hasMessageContaining("no such entry");
    }

    @Test
    void gearsThatRunInNothingGoWithTheirMesh() {
        Design mill = DesignReader.read(Path.of("demo", "windmill"));
        DesignFiles its = DesignFiles.of(mill);
        Map<Path, String> all = its.texts();
        String mesh = mill.figure()
                .works()
                .joints(MeshEntry.class)
                .keySet()
                .iterator()
                .next();
        List<String> gears = Objects.requireNonNull(
                        mill.figure().works().joints(MeshEntry.class).get(mesh))
                .between();
        EntryEdit.remove(mill, its, all, "figure.meshes." + mesh);
        Works left = DesignReader.readLike(mill, all).figure().works();
        assertThat(left.gears()).doesNotContainKeys(gears.get(0), gears.get(1));
    }
}
