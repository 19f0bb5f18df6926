package laminate.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import laminate.material.Form;
import laminate.material.MaterialKind;
import laminate.process.Process;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the words of the trade on the command line; a hyphen may stand for a space, so that nothing needs quotes. */
final class Words {
    private Words() {}

    /** Reads a process. */
    static final class OfProcess implements ITypeConverter<Process> {
        /** Made by the command line. */
        OfProcess() {}

        @Override
        public Process convert(String text) {
            return find(text, Process.values(), Process::word);
        }
    }

    /** Reads a form of reinforcement. */
    static final class OfForm implements ITypeConverter<Form> {
        /** Made by the command line. */
        OfForm() {}

        @Override
        public Form convert(String text) {
            return find(text, Form.values(), Form::word);
        }
    }

    /** Reads a kind of material. */
    static final class OfKind implements ITypeConverter<MaterialKind> {
        /** Made by the command line. */
        OfKind() {}

        @Override
        public MaterialKind convert(String text) {
            return find(text, MaterialKind.values(), MaterialKind::word);
        }
    }

    private static <T> T find(String text, T[] values, Function<T, String> word) {
        List<String> words = new ArrayList<>();
        for (T value : values) {
            if (plain(word.apply(value)).equals(plain(text))) {
                return value;
            }
            words.add(word.apply(value));
        }
        throw new TypeConversionException("'" + text + "' is not one of " + String.join(", ", words));
    }

    private static String plain(String text) {
        return text.strip().toLowerCase(Locale.ROOT).replace('-', ' ');
    }
}
