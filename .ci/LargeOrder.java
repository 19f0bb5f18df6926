import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * Times a whole run of {@code order} over 500 part files and 200 materials of the yard's own, which it makes in a temporary
 * folder, and prints the median with its ratio to the target of 2 s.
 *
 * <pre>java .ci/LargeOrder.java [RUNS] laminate-cli/laminate</pre>
 */
final class LargeOrder {
    private static final int PARTS = 500;
    private static final int FABRICS = 130;
    private static final int RESINS = 40;
    private static final int CORES = 30;
    private static final double TARGET = 2;

    private static final Random RANDOM = new Random(5);

    private LargeOrder() {}

    public static void main(String[] args) throws IOException, InterruptedException {
        boolean counted = args.length > 0 && args[0].matches("[0-9]+");
        int runs = counted ? Integer.parseInt(args[0]) : 9;
        if (args.length != (counted ? 2 : 1) || runs < 1) {
            System.err.println("usage: java .ci/LargeOrder.java [RUNS] laminate-cli/laminate");
            System.exit(2);
        }
        List<String> command = new ArrayList<>(List.of(args[args.length - 1], "order"));
        command.addAll(files(Files.createTempDirectory("large-order")));
        seconds(command);
        List<Double> times = new ArrayList<>();
        for (int i = 0; i < runs; i++) {
            times.add(seconds(command));
        }
        times.sort(null);
        double median = times.get(runs / 2);
        System.out.printf(
                Locale.ROOT,
                "order of %d parts, %d materials, %d runs on Java %s: median %.2f s, slowest %.2f s, ratio %.2f%n",
                PARTS,
                FABRICS + RESINS + CORES,
                runs,
                Runtime.version().feature(),
                median,
                times.get(runs - 1),
                median / TARGET);
    }

    private static List<String> files(Path folder) throws IOException {
        Files.writeString(folder.resolve("materials.yaml"), materials());
        Files.writeString(folder.resolve("prices.yaml"), prices());
        Files.writeString(
                folder.resolve("workshop.yaml"),
                "temperature: 18 °C\nlabour: {rate: 28 GBP/h, operations: {lay-up: 0.2 h/m² per layer}}\n");
        List<String> files = new ArrayList<>();
        for (int i = 0; i < PARTS; i++) {
            files.add(Files.writeString(folder.resolve("part-" + i + ".yaml"), part(i))
                    .toString());
        }
        return files;
    }

    private static String materials() {
        StringBuilder all = new StringBuilder("materials:\n");
        for (int i = 0; i < FABRICS; i++) {
            all.append(of("fabric-" + i, i % 2 == 0 ? """
                    kind: reinforcement, name: Yard's cloth, form: stitched, areal-weight: 600 g/m², \
                    plies: [{fibre: e-glass, angle: 0, areal-weight: 300 g/m²}, \
                    {fibre: e-glass, angle: 90, areal-weight: 300 g/m²}]""" : """
                    kind: reinforcement, name: Yard's mat, form: mat, areal-weight: 450 g/m², binder: powder, \
                    fibre: e-glass"""));
        }
        for (int i = 0; i < RESINS; i++) {
            all.append(of("resin-" + i, """
                    kind: resin, name: Yard's resin, family: polyester, use: laminating, waxed: false, \
                    density-liquid: 1110 kg/m³, density-cured: 1200 kg/m³, E: 3.3 GPa, nu: 0.36, alpha: 85e-6 1/K, \
                    tensile-strength: 58 MPa, elongation: 2.0 %, shrinkage: 7.5 %, styrene-content: 42 %, \
                    viscosity: 350 mPa·s, stage-thickness: 5 mm, \
                    cure: [{agent: mekp, amount: 1.5 %, from: 1 %, to: 3 %}], \
                    gel-time: [{agent: mekp, amount: 1.5 %, times: {20 °C: 22 min}}]"""));
        }
        for (int i = 0; i < CORES; i++) {
            all.append(of("foam-" + i, """
                    kind: core, name: Yard's foam, type: cross-linked PVC, open-cell: false, density: 80 kg/m³, \
                    E1: 70 MPa, E2: 70 MPa, G12: 27 MPa, nu12: 0.3, Ez: 90 MPa, G13: 27 MPa, G23: 27 MPa, \
                    alpha: 40e-6 1/K, compressive-strength: 1.2 MPa, shear-strength: 1.1 MPa, uptake-hand: 300 g/m², \
                    uptake-infusion: 200 g/m²"""));
        }
        return all.toString();
    }

    private static String of(String id, String figures) {
        return "  - {material: " + id + ", " + figures + "}\n";
    }

    private static String prices() {
        StringBuilder all = new StringBuilder("currency: GBP\nprices:\n");
        for (int i = 0; i < FABRICS; i++) {
            all.append(of("fabric-" + i, """
                    price: 3.20 GBP/kg, lead-time: 2 d, \
                    packs: [{pack: roll, amount: 35 kg, price: 108.50 GBP}, {pack: cut, amount: 5 kg, price: 19 GBP}]"""));
        }
        for (int i = 0; i < RESINS; i++) {
            all.append(of("resin-" + i, """
                    price: 4.10 GBP/kg, shelf-life: 180 d, \
                    packs: [{pack: can, amount: 5 kg, price: 24.50 GBP}, {pack: drum, amount: 25 kg, price: 102.50 GBP}]"""));
        }
        for (int i = 0; i < CORES; i++) {
            all.append(of("foam-" + i, """
                    price: 24.50 GBP/m², packs: [{pack: sheet, width: 1.0 m, length: 1.2 m, price: 29.40 GBP}]"""));
        }
        return all.toString();
    }

    private static String part(int number) {
        StringBuilder part = new StringBuilder("part: Part " + number + "\n").append("""
                workshop: workshop.yaml
                prices: prices.yaml
                materials: [materials.yaml]
                process: hand lay-up
                catalyst: {id: mekp, amount: 1.5 %}
                """).append("count: " + one(5) + "\nresin: resin-" + RANDOM.nextInt(RESINS) + "\nzones:\n");
        int zones = one(3);
        for (int i = 0; i < zones; i++) {
            part.append(String.format(
                    Locale.ROOT,
                    "  - {name: zone %d, area: %.2f m², coatings: [{gelcoat: gelcoat-iso, wet-film: 0.5 mm}], "
                            + "layers: [%s, {reinforcement: %s, times: 2}, {core: foam-%d, thickness: 10 mm}, %s]}%n",
                    i,
                    0.2 + RANDOM.nextDouble(),
                    fabric(),
                    fabric(),
                    RANDOM.nextInt(CORES),
                    fabric()));
        }
        return part.append("items: [{name: hinge, count: 2, mass: 0.12 kg, price: 9.00 GBP}]\n")
                .toString();
    }

    private static int one(int of) {
        return 1 + RANDOM.nextInt(of);
    }

    private static String fabric() {
        return "fabric-" + RANDOM.nextInt(FABRICS);
    }

    private static double seconds(List<String> command) throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder(command);
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        builder.redirectOutput(ProcessBuilder.Redirect.DISCARD);
        builder.redirectError(ProcessBuilder.Redirect.INHERIT);
        long start = System.nanoTime();
        int exitCode = builder.start().waitFor();
        double seconds = (System.nanoTime() - start) / 1e9;
        if (exitCode != 0) {
            throw new IllegalStateException("exit code " + exitCode + " of an order of " + PARTS + " parts");
        }
        return seconds;
    }
}
