package jackwork.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Which paths a template fits, and what is found in them. */
@Tag("quick")
class TemplateTest {

    private static final Template DESIGN = Template.of("/api/designs/<id>");
    private static final Template JOB = Template.of("/api/jobs/{number}");

    @Test
    void aDesignInAFolderIsNamedWithItsSlashHoweverThatIsSent() {
        Map<String, String> named = Map.of("id", "spoiled/heron-hangs-up");
        assertThat(DESIGN.match("/api/designs/spoiled/heron-hangs-up")).isEqualTo(named);
        assertThat(DESIGN.match("/api/designs/spoiled%2Fheron-hangs-up")).isEqualTo(named);
        assertThat(DESIGN.match("/api/designs/spoiled%2fheron-hangs-up/")).isEqualTo(named);
    }

    @Test
    void aNumberHasNoSlashes() {
        assertThat(JOB.match("/api/jobs/12")).isEqualTo(Map.of("number", "12"));
        assertThat(JOB.match("/api/jobs/12/13")).isNull();
        assertThat(JOB.match("/api/jobs/")).isNull();
        assertThat(JOB.match("/api/jobs")).isNull();
    }

    @Test
    void aPlusSignIsOne() {
        assertThat(DESIGN.match("/api/designs/a+b")).isEqualTo(Map.of("id", "a+b"));
        assertThat(DESIGN.match("/api/designs/a+b%20c")).isEqualTo(Map.of("id", "a+b c"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"%u0041", "%", "a%2", "%zz", "heron%"})
    void whatIsNotEncodedRightIsNothing(String value) {
        assertThat(DESIGN.match("/api/designs/" + value)).isNull();
    }

    @Test
    void theFirstAddressIsNoOther() {
        Template first = Template.of("/");
        assertThat(first.match("/")).isEmpty();
        assertThat(first.match("//")).isNull();
        assertThat(first.match("")).isNull();
        assertThat(first.match("/a")).isNull();
    }

    @ParameterizedTest
    @ValueSource(strings = {"/api/{number}/more", "/api/<id>/more", "/api/{a}-{b}", "/api/{a", "/api/<{a}>"})
    void aNameStandsLastOrNotAtAll(String text) {
        assertThatThrownBy(() -> Template.of(text))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(text);
    }

    /** Beside a regular expression, which says the same in its own way. */
    @Test
    void fitsWhatARegularExpressionFits() {
        Random random = new Random(20260730);
        String letters = "ab/+-.";
        int fitted = 0;
        for (int i = 0; i < 20_000; i++) {
            StringBuilder path = new StringBuilder(random.nextInt(4) == 0 ? "/b/" : "/a/");
            for (int n = random.nextInt(6); n > 0; n--) {
                path.append(letters.charAt(random.nextInt(letters.length())));
            }
            String asked = path.toString();
            fitted += isTheSame(asked, "/a/{x}", Pattern.compile("/a/([^/]+)/?")) ? 1 : 0;
            fitted += isTheSame(asked, "/a/<x>", Pattern.compile("/a/(.*[^/]/?|.*//)")) ? 1 : 0;
            fitted += isTheSame(asked, "/a/b", Pattern.compile("/a/b/?")) ? 1 : 0;
        }
        assertThat(fitted).isGreaterThan(5_000);
    }

    private static boolean isTheSame(String path, String template, Pattern pattern) {
        Map<String, String> matched = Template.of(template).match(path);
        Matcher matcher = pattern.matcher(path);
        assertThat(matched != null).as(template + " " + path).isEqualTo(matcher.matches());
        return matched != null;
    }

    @Test
    void everyNameComesThroughEncoded() {
        Random random = new Random(4);
        for (int i = 0; i < 2_000; i++) {
            StringBuilder name = new StringBuilder("x");
            for (int n = random.nextInt(8); n > 0; n--) {
                name.appendCodePoint(1 + random.nextInt(0xD7FF - 1));
            }
            String sent =
                    URLEncoder.encode(name.toString(), StandardCharsets.UTF_8).replace("+", "%20");
            assertThat(JOB.match("/api/jobs/" + sent)).isEqualTo(Map.of("number", name.toString()));
            assertThat(DESIGN.match("/api/designs/" + sent + "/")).isEqualTo(Map.of("id", name.toString()));
        }
    }
}
