package laminate.file;

import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import laminate.process.Process;
import laminate.process.ShopFloor;

/**
 * What a user asks for instead of what the part file states.
 *
 * @param process the process of every layer, whatever the file says: the question "what if it were infused"
 * @param workshop the workshop file in place of the part's own
 * @param prices the price file in place of the part's own
 * @param materials material files laid over those that the part names; of two materials of one id the later wins
 * @param resin the id of the resin in place of the part's own; layers for which a zone, stage or layer states another keep
 *     that. It takes the dose that is stated where that cures it, else its usual one
 * @param temperature the temperature of the workshop in place of its own (K)
 * @param schedules names of schedules, each with the one whose layers are laid in its place
 * @param crew how many laminate together, in place of the workshop's own number
 */
public record Overrides(
        Optional<Process> process,
        Optional<Path> workshop,
        Optional<Path> prices,
        List<Path> materials,
        Optional<String> resin,
        OptionalDouble temperature,
        Map<String, String> schedules,
        OptionalInt crew) {

    /** Everything as the part file states it. */
    public static final Overrides NONE = new Overrides(Optional.empty(), Optional.empty(), Optional.empty(), List.of());

    /**
     * Checks that nothing is missing.
     *
     * @throws IllegalArgumentException if the temperature is not above 0 K, or nobody works
     */
    public Overrides {
        Objects.requireNonNull(process, "process");
        Objects.requireNonNull(workshop, "workshop");
        Objects.requireNonNull(prices, "prices");
        Objects.requireNonNull(resin, "resin");
        materials = List.copyOf(materials);
        schedules = Collections.unmodifiableMap(new LinkedHashMap<>(schedules));
        if (temperature.isPresent() && !(temperature.getAsDouble() > 0 && Double.isFinite(temperature.getAsDouble()))) {
            throw new IllegalArgumentException("a temperature must be above 0 K, not " + temperature.getAsDouble());
        }
        if (crew.isPresent() && (crew.getAsInt() < 1 || crew.getAsInt() > ShopFloor.LARGEST_CREW)) {
            throw new IllegalArgumentException("a crew is 1 to " + ShopFloor.LARGEST_CREW + ", not " + crew.getAsInt());
        }
    }

    /**
     * Another process and other files alone.
     *
     * @param process the process of every layer
     * @param workshop the workshop file in place of the part's own
     * @param prices the price file in place of the part's own
     * @param materials material files laid over those that the part names
     */
    public Overrides(Optional<Process> process, Optional<Path> workshop, Optional<Path> prices, List<Path> materials) {
        this(
                process,
                workshop,
                prices,
                materials,
                Optional.empty(),
                OptionalDouble.empty(),
                Map.of(),
                OptionalInt.empty());
    }

    /**
     * These with another process of every layer.
     *
     * @param asked the process
     * @return what is asked for
     */
    public Overrides withProcess(Process asked) {
        return new Overrides(Optional.of(asked), workshop, prices, materials, resin, temperature, schedules, crew);
    }

    /**
     * These with another resin.
     *
     * @param id the id of the resin in place of the part's own
     * @return what is asked for
     */
    public Overrides withResin(String id) {
        return new Overrides(process, workshop, prices, materials, Optional.of(id), temperature, schedules, crew);
    }

    /**
     * These at another temperature.
     *
     * @param kelvin the temperature of the workshop (K)
     * @return what is asked for
     * @throws IllegalArgumentException if it is not above 0 K
     */
    public Overrides withTemperature(double kelvin) {
        return new Overrides(process, workshop, prices, materials, resin, OptionalDouble.of(kelvin), schedules, crew);
    }

    /**
     * These with other schedules.
     *
     * @param inPlace names of schedules, each with the one whose layers are laid in its place
     * @return what is asked for
     */
    public Overrides withSchedules(Map<String, String> inPlace) {
        return new Overrides(process, workshop, prices, materials, resin, temperature, inPlace, crew);
    }

    /**
     * These with another crew.
     *
     * @param hands how many laminate together
     * @return what is asked for
     * @throws IllegalArgumentException if nobody works
     */
    public Overrides withCrew(int hands) {
        return new Overrides(
                process, workshop, prices, materials, resin, temperature, schedules, OptionalInt.of(hands));
    }

    /** These as far as they hold for a mould too: the files, the temperature and the crew, not how the part is made. */
    Overrides forMoulds() {
        return new Overrides(
                Optional.empty(), workshop, prices, materials, Optional.empty(), temperature, Map.of(), crew);
    }

    /** Whether other layers result than the part file states, so that what it says of them need not hold. */
    boolean changeLayers() {
        return process.isPresent() || resin.isPresent() || !schedules.isEmpty();
    }
}
