package jackwork.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jackwork.DemoCopy;
import jackwork.design.Design;
import jackwork.design.DesignException;
import jackwork.design.DesignReader;
import jackwork.geometry.Point;
import jackwork.motion.rest.StrokeResult;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An apron from the heron's leg to its tail, which the body's bow carries away from the leg. */
@Tag("quick")
class ClothSpansTest {

    @TempDir
    private Path folder;

    private Design heron(String cloth) throws IOException {
        Path workshop = DemoCopy.at(Files.createTempDirectory(folder, "w"));
        Path figure = workshop.resolve("heron/figure.yaml");
        Files.writeString(figure, Files.readString(figure) + "\ncloths:\n  apron: " + cloth + "\n");
        Path drawing = workshop.resolve("heron/figure.svg");
        Files.writeString(
                drawing,
                Files.readString(drawing)
                        .replace("</svg>", "<path id=\"apron\" d=\"M25,68 L75,68 L75,110 L60,120 Z\"/></svg>"));
        return DesignReader.read(workshop.resolve("heron"));
    }

    private static Finding finding(Subject subject) {
        return Questions.ask(subject).stream()
                .filter(finding -> finding.id().equals("cloth-spans/apron"))
                .findFirst()
                .orElseThrow();
    }

    /** Leg and tail are two sides of a triangle whose corner, at the hip, opens as the body turns. */
    @Test
    void theGreatestDistanceFollowsTheLawOfCosines() throws IOException {
        Design design = heron("{outline: apron, from: {part: leg-near, at: mount-left}, to: {part: body, at: tail}}");
        Subject subject = Subject.of(design);
        Finding finding = finding(subject);

        Point hip = design.inFigure(null, "hip");
        Point leg = design.inFigure(null, "mount-left").minus(hip);
        Point tail = design.inFigure(null, "tail").minus(hip);
        StrokeResult stroke = subject.stroke();
        int body = subject.mechanism().bodyNumber("body");
        double most = 0;
        for (double[] pose : stroke.pose()) {
            double corner = Math.atan2(leg.cross(tail), leg.dot(tail)) + pose[3 * body + 2];
            most = Math.max(
                    most,
                    Math.sqrt(leg.dot(leg) + tail.dot(tail) - 2 * leg.length() * tail.length() * Math.cos(corner)));
        }
        assertThat(finding.limit()).isCloseTo(most, within(1e-6));
        assertThat(finding.value()).isCloseTo(leg.distance(tail), within(1e-9));
        // The tail goes up as the heron bows.
        assertThat(most).isGreaterThan(leg.distance(tail) + 1);
        assertThat(finding.status()).isEqualTo(Status.FAIL);
        assertThat(finding.remedy()).contains(Words.number(most - leg.distance(tail)) + " mm more");
    }

    @Test
    void enoughClothPasses() throws IOException {
        Subject subject = Subject.of(
                heron(
                        "{on: body, outline: apron, hem: 8, length: 150, from: {part: leg-near, at: mount-left}, to: {part: body, at: tail}}"));
        assertThat(finding(subject).status()).isEqualTo(Status.PASS);
        assertThat(finding(subject).remedy()).isEmpty();
    }

    @Test
    void clothThatHangsFreeIsNotAsked() throws IOException {
        assertThat(Questions.ask(Subject.of(heron("{outline: apron}"))))
                .noneMatch(finding -> finding.id().startsWith("cloth-spans"));
    }

    @Test
    void whatIsWrongHasItsPlace() {
        assertThatThrownBy(() -> heron("{outline: aprn}"))
                .isInstanceOf(DesignException.class)
                .hasMessageContaining("figure.yaml:")
                .hasMessageContaining("did you mean \"apron\"?");
        assertThatThrownBy(() -> heron("{outline: apron, from: {part: body, at: tail}}"))
                .hasMessageContaining("expected both from and to, or neither");
        assertThatThrownBy(() -> heron("{outline: apron, from: {part: bodi, at: tail}, to: {part: body, at: tial}}"))
                .hasMessageContaining("did you mean \"body\"?")
                .hasMessageContaining("did you mean \"tail\"?");
        // Numbers are held against their bounds before names are looked up.
        assertThatThrownBy(() -> heron("{outline: apron, hem: -1}"))
                .isInstanceOf(DesignException.class)
                .hasMessageContaining("figure.yaml:")
                .hasMessageContaining("expected 0 to 100");
    }
}
