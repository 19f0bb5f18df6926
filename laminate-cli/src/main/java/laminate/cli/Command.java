package laminate.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParameterException;

/**
 * A command: its options, and what it does with them.
 *
 * <p>Options are declared as fields by the methods here, and not by annotations: to read annotations takes the start of
 * the program as long as all the rest of the command line.
 */
abstract class Command implements Callable<Integer> {
    private final CommandSpec spec = CommandSpec.wrapWithoutInspection(this);
    private Optional<OptionSpec> output = Optional.empty();

    /**
     * Makes a command without options but help and version.
     *
     * @param name its name
     * @param description what it does, in a line or two
     * @param examples command lines to learn from
     */
    Command(String name, String description, String... examples) {
        spec.name(name).versionProvider(new Version());
        spec.usageMessage().description(description);
        if (examples.length > 0) {
            spec.usageMessage().footerHeading(examples.length == 1 ? "%nExample:%n" : "%nExamples:%n");
            spec.usageMessage().footer(indented(examples));
        }
        spec.addOption(OptionSpec.builder("-h", "--help")
                .usageHelp(true)
                .description("Show this help message and exit.")
                .build());
        spec.addOption(OptionSpec.builder("-V", "--version")
                .versionHelp(true)
                .description("Print version information and exit.")
                .build());
    }

    private static String[] indented(String... examples) {
        String[] lines = new String[examples.length];
        for (int i = 0; i < lines.length; i++) {
            lines[i] = "  " + examples[i].replace("%", "%%");
        }
        return lines;
    }

    /** The command, ready for the command line. */
    final CommandLine line() {
        return new CommandLine(spec);
    }

    /** The command without the program around it, which helps and complains as if it stood within. */
    final CommandLine alone(String program) {
        spec.name(program + " " + spec.name());
        return line();
    }

    final CommandSpec spec() {
        return spec;
    }

    /** Declares an option with one value. */
    final OptionSpec option(String name, String label, Class<?> type, String description) {
        return add(OptionSpec.builder(name).paramLabel(label).type(type).description(description));
    }

    /** Declares an option with one value of a word that a converter reads. */
    final OptionSpec option(String name, String label, ITypeConverter<?> converter, String description) {
        return add(OptionSpec.builder(name)
                .paramLabel(label)
                .type(Object.class)
                .converters(converter)
                .description(description));
    }

    /** Declares an option that may be repeated. */
    final OptionSpec repeated(String name, String label, Class<?> type, String description) {
        return add(OptionSpec.builder(name)
                .paramLabel(label)
                .type(List.class)
                .auxiliaryTypes(type)
                .description(description));
    }

    /** Declares an option that may be repeated, of words that a converter reads. */
    final OptionSpec repeated(String name, String label, ITypeConverter<?> converter, String description) {
        return add(converted(name, label, converter).description(description));
    }

    /** Declares an option that takes several words with commas between, and may be repeated. */
    final OptionSpec listed(String name, String label, ITypeConverter<?> converter, String description) {
        return add(converted(name, label, converter).splitRegex(",").description(description));
    }

    private static OptionSpec.Builder converted(String name, String label, ITypeConverter<?> converter) {
        return OptionSpec.builder(name)
                .paramLabel(label)
                .type(List.class)
                .auxiliaryTypes(Object.class)
                .converters(converter);
    }

    /** Declares an option without a value. */
    final OptionSpec flag(String name, String description) {
        return add(OptionSpec.builder(name).type(boolean.class).arity("0").description(description));
    }

    /** Declares the option that takes results to a file. */
    final OptionSpec output() {
        OptionSpec file = add(OptionSpec.builder("-o", "--output")
                .paramLabel("FILE")
                .type(Path.class)
                .description("Write to a file, whole or not at all."));
        output = Optional.of(file);
        return file;
    }

    /** Declares what follows the options. */
    final PositionalParamSpec arguments(String label, String arity, Class<?> type, String description) {
        PositionalParamSpec arguments = PositionalParamSpec.builder()
                .paramLabel(label)
                .index(arity.endsWith("*") ? "0..*" : "0")
                .arity(arity)
                .required(!arity.startsWith("0"))
                .type(List.class)
                .auxiliaryTypes(type)
                .description(description)
                .build();
        spec.addPositional(arguments);
        return arguments;
    }

    private OptionSpec add(OptionSpec.Builder builder) {
        OptionSpec option = builder.build();
        spec.addOption(option);
        return option;
    }

    /** The value of an option, empty if it was not given. */
    static <T> Optional<T> given(OptionSpec option, Class<T> type) {
        return Optional.ofNullable(option.getValue()).map(type::cast);
    }

    /** Whether a flag was given. */
    static boolean isSet(OptionSpec flag) {
        return Boolean.TRUE.equals(flag.getValue());
    }

    /** The values of a repeated option, or of arguments. */
    static <T> List<T> all(CommandLine.Model.ArgSpec arguments, Class<T> type) {
        List<?> values = arguments.getValue();
        return values == null ? List.of() : values.stream().map(type::cast).toList();
    }

    /** Refuses a wrong usage. */
    final void refuse(boolean wrong, String why) {
        if (wrong) {
            throw new ParameterException(spec.commandLine(), why);
        }
    }

    /** Refuses a file for the output that is one of the inputs. */
    final void refuseToOverwrite(Optional<Path> output, List<Path> inputs) {
        if (output.isPresent()) {
            for (Path input : inputs) {
                refuse(isSame(input, output.get()), "-o would overwrite the input file " + input);
            }
        }
    }

    /** Refuses an output that is one of these files, which are not known before the first of them is read. */
    final void refuseToOverwrite(List<Path> inputs) {
        if (output.isPresent()) {
            refuseToOverwrite(given(output.get(), Path.class), inputs);
        }
    }

    private static boolean isSame(Path one, Path other) {
        try {
            return Files.exists(one) && Files.exists(other) && Files.isSameFile(one, other);
        } catch (IOException e) {
            // What cannot be looked at is told when it is read or written.
            return false;
        }
    }

    /** Prints to the file that was asked for, or to standard output. */
    final int print(Optional<Path> file, Output.Print print) {
        Output.write(file, spec.commandLine().getOut(), print);
        return ExitCode.DONE;
    }
}
