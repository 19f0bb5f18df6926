package laminate.file;

import static laminate.file.Scalars.oneOf;

import java.util.Locale;
import java.util.Optional;
import laminate.material.Core;
import laminate.material.Fibre;
import laminate.material.Form;
import laminate.material.Reinforcement;
import laminate.material.Resin;
import laminate.material.Status;
import laminate.process.ConsumableUse;
import laminate.process.CoreFinish;
import laminate.process.Process;
import laminate.process.StrengthBasis;
import laminate.theory.Micromechanics;
import laminate.unit.PriceBasis;

/** The readings of values that are one of several fixed words. */
final class Words {

    static final Reading<Process> PROCESS = oneOf(Process::word, Process.values());
    static final Reading<Form> FORM = oneOf(Form::word, Form.values());

    private Words() {}

    /** The words of materials, apart so that a part without materials of its own need not make them. */
    static final class OfMaterials {
        static final Reading<Fibre.Type> FIBRE = oneOf(Fibre.Type::word, Fibre.Type.values());
        static final Reading<Resin.Family> FAMILY = oneOf(Resin.Family::word, Resin.Family.values());
        static final Reading<Resin.Use> USE = oneOf(Resin.Use::word, Resin.Use.values());
        static final Reading<Reinforcement.Binder> BINDER =
                oneOf(Reinforcement.Binder::word, Reinforcement.Binder.values());
        static final Reading<Core.Type> CORE = oneOf(Core.Type::word, Core.Type.values());
        static final Reading<Status> STATUS = oneOf(Status::word, Status.values());

        private OfMaterials() {}
    }

    static Reading<CoreFinish.Kind> finish() {
        return oneOf(CoreFinish.Kind::word, CoreFinish.Kind.values());
    }

    /** What a consumable is measured and sold by. */
    static Reading<PriceBasis> measure() {
        return new ScalarReading<>() {
            @Override
            PriceBasis of(String text) {
                Optional<PriceBasis> measure = PriceBasis.find(text.strip());
                if (measure.isEmpty() || !measure.get().isMeasure()) {
                    throw new IllegalArgumentException(
                            Complaints.shown(text) + " is no measure of a consumable; accepted: m², m, kg, l, piece");
                }
                return measure.get();
            }
        };
    }

    static Reading<ConsumableUse.Basis> consumableBasis() {
        return oneOf(ConsumableUse.Basis::word, ConsumableUse.Basis.values());
    }

    static Reading<StrengthBasis> strengthBasis() {
        return oneOf(StrengthBasis::word, StrengthBasis.values());
    }

    static Reading<Micromechanics> micromechanics() {
        return oneOf(model -> model.name().toLowerCase(Locale.ROOT).replace('_', '-'), Micromechanics.values());
    }
}
