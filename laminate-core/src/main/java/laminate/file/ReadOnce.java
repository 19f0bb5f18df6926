package laminate.file;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import laminate.material.Materials;
import laminate.part.Tooling;

/**
 * What several parts may name and is read once all the same: moulds and plugs. One serves one reading, of a part with what
 * it is made on, or of a whole project.
 */
class ReadOnce {

    private final Materials library;
    private final Overrides overrides;
    private final SharedFiles shared;
    private final NamedMaterials forAll;
    private final Map<Path, Optional<Job>> moulds = new HashMap<>();

    ReadOnce(Materials library, Overrides overrides, SharedFiles shared) {
        this(library, overrides, shared, new NamedMaterials());
    }

    /** With material files for all parts, which lie under those that a part names. */
    ReadOnce(Materials library, Overrides overrides, SharedFiles shared, NamedMaterials forAll) {
        this.library = library;
        this.overrides = overrides;
        this.shared = shared;
        this.forAll = forAll;
    }

    /** The mould or plug of a part file, made as that says, whatever the part is asked to be made by; empty if it is flawed. */
    Optional<Job> mould(Path file, MadeHere here, Complaints complaints) {
        Path key = key(file);
        Optional<Job> known = moulds.get(key);
        if (known != null) {
            return known;
        }
        PartReader reader = new PartReader(file, library, overrides.forMoulds(), here.on(file), this);
        Optional<Job> read = reader.madeOn(madeOn(key)).read(complaints);
        moulds.put(key, read);
        return read;
    }

    /** What the mould of a file is made on in place of its own tooling: nothing unless a project says so. */
    Optional<MadeOn> madeOn(Path key) {
        return Optional.empty();
    }

    /** Takes note of tooling that a part file states, and calls its mould as the project does, if there is one. */
    Tooling noted(Tooling stated, Fields in) {
        return stated;
    }

    /** The library, with material files laid over it: those for all parts, those that a part names, those asked for. */
    Stock stock(NamedMaterials ofPart, Complaints complaints) {
        List<Path> files = new ArrayList<>(forAll.files());
        files.addAll(ofPart.files());
        files.addAll(overrides.materials());
        return shared.stock(library, files, forAll.isComplete() && ofPart.isComplete(), complaints);
    }

    /** The files that are read once a run, whatever part or project names them. */
    SharedFiles shared() {
        return shared;
    }

    /** One path for all ways to write that of a file. */
    static Path key(Path file) {
        try {
            return file.toRealPath();
        } catch (IOException e) {
            return file.toAbsolutePath().normalize();
        }
    }
}
