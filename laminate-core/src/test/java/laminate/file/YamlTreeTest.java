package laminate.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.Collections;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class YamlTreeTest {

    private static Node.Mapping tree(String text) {
        Complaints complaints = new Complaints();
        return (Node.Mapping) complaints.settle(YamlTree.read("t.yaml", text, Keys.PART, complaints));
    }

    private static Node at(Node node, String key) {
        return ((Node.Mapping) node).entries().get(key).value();
    }

    private static Node at(Node node, int item) {
        return ((Node.Sequence) node).items().get(item);
    }

    private static Position place(int line, int column) {
        return new Position("t.yaml", line, column);
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r\n", "\r"})
    void everyNodeKnowsItsLineAndColumn(String lineEnd) {
        Node.Mapping root = tree("""
                part: Lid
                # a comment
                zones:
                  - name: 'bow'   # another
                    layers: [mat-300, {core: pvc-80}]
                """.replace("\n", lineEnd));
        assertThat(root.position()).isEqualTo(place(1, 1));
        assertThat(root.entries().get("zones").key().position()).isEqualTo(place(3, 1));
        assertThat(at(root, "zones").position()).isEqualTo(place(4, 3));
        Node zone = at(at(root, "zones"), 0);
        assertThat(zone.position()).isEqualTo(place(4, 5));
        assertThat(at(zone, "name").position()).isEqualTo(place(4, 11));
        Node layers = at(zone, "layers");
        assertThat(layers.position()).isEqualTo(place(5, 13));
        assertThat(at(layers, 0).position()).isEqualTo(place(5, 14));
        assertThat(at(layers, 1).position()).isEqualTo(place(5, 23));
        assertThat(at(at(layers, 1), "core").position()).isEqualTo(place(5, 30));
    }

    @Test
    void columnsCountCharactersNotBytesNorSurrogates() {
        Node.Mapping root = tree("ä: {é𝄞: 'x²𝄞y', b: 1}\n");
        Node.Entry first = ((Node.Mapping) at(root, "ä")).entries().get("é𝄞");
        assertThat(first.key().position()).isEqualTo(place(1, 5));
        Node.Scalar value = (Node.Scalar) first.value();
        assertThat(value.position()).isEqualTo(place(1, 9));
        assertThat(value.at(value.text().indexOf('y'))).isEqualTo(place(1, 13));
        assertThat(at(at(root, "ä"), "b").position()).isEqualTo(place(1, 20));
    }

    @Test
    void offsetInPlainAndQuotedTextIsAPlaceAndInChangedTextItsBeginning() {
        Node.Mapping root = tree("a: 5 mm\nb: \"5 mm\"\nc: '5 mm'\nd: \"5\\x20mm\"\ne: 'it''s'\nf: >\n  5 mm\n");
        assertThat(root.entries().values().stream().map(entry -> ((Node.Scalar) entry.value()).at(2)))
                .containsExactly(place(1, 6), place(2, 7), place(3, 7), place(4, 4), place(5, 4), place(6, 4));
    }

    @Test
    void nodesKnowHowAMessageCallsThem() {
        Node.Mapping root = tree("zones: [[a, {b: c}]]\n");
        assertThat(root.name()).isEmpty();
        Node inner = at(at(root, "zones"), 0);
        assertThat(inner.name()).isEqualTo("zones, entry 1");
        assertThat(at(inner, 1).name()).isEqualTo("zones, entry 1, entry 2");
        assertThat(at(at(inner, 1), "b").name()).isEqualTo("b");
    }

    @Test
    void textStaysAsItWasWritten() {
        Map<String, String> written = Map.of(
                "a",
                "010",
                "b",
                "0x1F",
                "c",
                "1_0",
                "d",
                "no",
                "e",
                "1:30",
                "f",
                "1.50",
                "g",
                "2026-01-15",
                "h",
                "Yes",
                "i",
                "+.inf",
                "j",
                "1e3");
        StringBuilder text = new StringBuilder();
        written.forEach(
                (key, value) -> text.append(key).append(": ").append(value).append('\n'));
        Node.Mapping root = tree(text.toString());
        written.forEach(
                (key, value) -> assertThat(((Node.Scalar) at(root, key)).text()).isEqualTo(value));
    }

    @Test
    void quotedNullsAndMarksAreText() {
        Node.Mapping root = tree("a: 'null'\nb: '~'\nc: '*x'\nd: \"&x\"\ne: '!x'\nf: 'a: b'\n");
        assertThat(root.entries().values().stream().map(entry -> ((Node.Scalar) entry.value()).text()))
                .containsExactly("null", "~", "*x", "&x", "!x", "a: b");
    }

    @Test
    void keysKeepTheOrderOfTheFile() {
        assertThat(tree("z: 1\na: 2\nm: 3\n").entries().keySet()).containsExactly("z", "a", "m");
    }

    @Test
    void versionLineIsAccepted() {
        assertThat(tree("%YAML 1.2\n---\npart: Lid\n").entries()).containsOnlyKeys("part");
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void twentyThousandEntriesAreRead(boolean onOneLine) {
        assertThat(SketchFile.read("t.yaml", form(20_000, onOneLine)).zones()).hasSize(20_000);
    }

    @Test
    void everyComplaintOfALongFileComes() {
        String text = zones(20_000).replace("1.5 m²", "1.5");
        InputException thrown = catchThrowableOfType(InputException.class, () -> SketchFile.read("t.yaml", text));
        assertThat(thrown.complaints()).hasSize(20_000);
    }

    private static String form(int zones, boolean onOneLine) {
        return onOneLine ? oneLine(zones) : zones(zones);
    }

    private static String zones(int count) {
        StringBuilder text = new StringBuilder("part: Long 𝄞\nzones:\n");
        for (int i = 0; i < count; i++) {
            text.append(String.format(Locale.ROOT, "  - name: zone %d%n    area: 1.5 m²%n    layers: [mat-300]%n", i));
        }
        return text.toString();
    }

    private static String oneLine(int count) {
        String zone = "{name: zone 𝄞, area: 1.5 m², layers: [mat-300]}";
        return "{part: Long, zones: [" + String.join(", ", Collections.nCopies(count, zone)) + "]}";
    }
}
