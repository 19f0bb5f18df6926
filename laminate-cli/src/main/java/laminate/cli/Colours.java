package laminate.cli;

import laminate.print.Style;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;

/** Marks lines for a terminal that shows colours. */
final class Colours implements Style {
    private static final Colours SHOWN = new Colours();

    private Colours() {}

    /**
     * The style for a command's output: colours only on a terminal, and only if the user has not asked for none.
     *
     * @param spec the command, which knows whether colours are wanted
     * @param toFile whether the output goes to a file
     * @return the style
     */
    static Style of(CommandSpec spec, boolean toFile) {
        boolean wanted = !toFile && spec.commandLine().getColorScheme().ansi().enabled();
        return wanted ? SHOWN : Style.PLAIN;
    }

    @Override
    public String apply(Mark mark, String line) {
        String tag = switch (mark) {
            case HEADING -> "bold";
            case COLUMNS -> "faint";
            case TOTAL -> "bold";
            case CAUTION -> "yellow";
        };
        return Ansi.Style.on(Ansi.Style.parse(tag)) + line + Ansi.Style.reset.on();
    }
}
