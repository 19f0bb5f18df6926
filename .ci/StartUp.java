import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import javax.tools.ToolProvider;

/**
 * Times a whole run of a command against a trivial program on the same Java, pair by pair, and prints the median ratio.
 *
 * <pre>java .ci/StartUp.java [PAIRS] laminate-cli/laminate estimate samples/lake-club/locker-lid.yaml</pre>
 */
final class StartUp {
    private static final int WARM_UPS = 3;

    private StartUp() {}

    public static void main(String[] args) throws IOException, InterruptedException {
        boolean counted = args.length > 0 && args[0].matches("[0-9]+");
        int pairs = counted ? Integer.parseInt(args[0]) : 20;
        List<String> command = Arrays.asList(args).subList(counted ? 1 : 0, args.length);
        if (command.isEmpty() || pairs < 1) {
            System.err.println("usage: java .ci/StartUp.java [PAIRS] COMMAND [ARGUMENT…]");
            System.exit(2);
        }
        List<String> trivial = trivialProgram();
        List<Double> ratios = new ArrayList<>();
        List<Double> times = new ArrayList<>();
        List<Double> trivialTimes = new ArrayList<>();
        for (int i = -WARM_UPS; i < pairs; i++) {
            double base = seconds(trivial);
            double time = seconds(command);
            if (i >= 0) {
                ratios.add(time / base);
                times.add(time);
                trivialTimes.add(base);
            }
        }
        System.out.printf(
                Locale.ROOT,
                "%d pairs on Java %s: trivial program %.0f ms, command %.0f ms, median ratio %.2f%n",
                pairs,
                Runtime.version().feature(),
                1e3 * median(trivialTimes),
                1e3 * median(times),
                median(ratios));
    }

    private static List<String> trivialProgram() throws IOException {
        Path folder = Files.createTempDirectory("trivial");
        Path source = folder.resolve("Trivial.java");
        Files.writeString(
                source, "class Trivial { public static void main(String[] args) { System.out.println(\"hello\"); } }");
        if (ToolProvider.getSystemJavaCompiler().run(null, null, null, "-d", folder.toString(), source.toString()) != 0) {
            throw new IllegalStateException("the trivial program does not compile");
        }
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        return List.of(java, "-cp", folder.toString(), "Trivial");
    }

    private static double seconds(List<String> command) throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder(command);
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        builder.redirectOutput(ProcessBuilder.Redirect.DISCARD);
        builder.redirectError(ProcessBuilder.Redirect.DISCARD);
        long start = System.nanoTime();
        int exitCode = builder.start().waitFor();
        double seconds = (System.nanoTime() - start) / 1e9;
        if (exitCode != 0) {
            throw new IllegalStateException("exit code " + exitCode + " of " + command);
        }
        return seconds;
    }

    private static double median(List<Double> values) {
        List<Double> sorted = values.stream().sorted().toList();
        int middle = sorted.size() / 2;
        return sorted.size() % 2 == 1 ? sorted.get(middle) : (sorted.get(middle - 1) + sorted.get(middle)) / 2;
    }
}
