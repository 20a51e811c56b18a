package jackwork.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.impl.driver.Driver;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.jar.JarFile;
import java.util.zip.ZipEntry;
import org.junit.jupiter.api.Test;

/** The page's sources under the TypeScript compiler, strict, on the Node that Playwright brings along. */
class TypeScriptCheckTest {

    private static final Path COMPILER = Path.of("target", "typescript");

    @Test
    void thePageTypeChecks() throws IOException, InterruptedException {
        Path compiler = unpackCompiler();
        Path node = Driver.ensureDriverInstalled(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1"), false)
                .driverDir()
                .resolve(System.getProperty("os.name").startsWith("Windows") ? "node.exe" : "node");
        Process process = new ProcessBuilder(
                        node.toString(), compiler.toString(), "--noEmit", "-p", "web/tsconfig.json")
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
        assertThat(said).isEmpty();
        assertThat(process.exitValue()).isZero();
    }

    /** The compiler lies in a jar of the test class path; Node needs it as files. */
    private static Path unpackCompiler() throws IOException {
        String classPath = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        Path jar = java.util.Arrays.stream(classPath.split(java.io.File.pathSeparator))
                .filter(entry -> entry.contains("typescript"))
                .map(Path::of)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no TypeScript compiler on the test class path"));
        try (JarFile file = new JarFile(jar.toFile())) {
            for (ZipEntry entry : file.stream().toList()) {
                int at = entry.getName().indexOf("/lib/");
                if (entry.isDirectory() || at < 0) {
                    continue;
                }
                Path target =
                        COMPILER.resolve(entry.getName().substring(at + 1)).normalize();
                assertThat(target.startsWith(COMPILER)).isTrue();
                Files.createDirectories(target.getParent());
                try (InputStream in = file.getInputStream(entry)) {
                    Files.copy(in, target, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
                }
            }
        }
        return COMPILER.resolve("lib").resolve("tsc.js");
    }
}
