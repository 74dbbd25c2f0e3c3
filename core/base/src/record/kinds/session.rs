//! Fields of a session.

use super::spec::{spec, Spec, CHILD_MASS, LEVEL, NOTE, PAIN, SPEED, VACUUM};
use crate::record::choices::{FELT, METHODS, SIDES, WHERE};
use crate::record::{Kind, Takes};

pub(super) const SESSION: &[Spec] = &[
    spec("started", Takes::Moment, "when"),
    spec("ended", Takes::Moment, "when"),
    spec("amount_left", Takes::Amount, "amount"),
    spec("amount_right", Takes::Amount, "amount"),
    spec("amount_together", Takes::Amount, "amount"),
    spec("weight_before", CHILD_MASS, "weighing"),
    spec("weight_after", CHILD_MASS, "weighing"),
    spec("child", Takes::Refers(Kind::Child), "weighing"),
    spec("method", Takes::Choice(METHODS), "how"),
    spec("sides", Takes::Choice(SIDES), "how"),
    spec("pump", Takes::Refers(Kind::Pump), "how"),
    spec("flange_left", Takes::Refers(Kind::Flange), "how"),
    spec("flange_right", Takes::Refers(Kind::Flange), "how"),
    spec("where", Takes::Choice(WHERE), "how"),
    spec("hands_on", Takes::Flag, "how"),
    spec("letdowns", Takes::Whole { least: 0, most: 20 }, "letdown"),
    spec("letdown_felt", Takes::Choice(FELT), "letdown"),
    spec("pain_left_letdown", PAIN, "comfort"),
    spec("pain_left_expression", PAIN, "comfort"),
    spec("pain_right_letdown", PAIN, "comfort"),
    spec("pain_right_expression", PAIN, "comfort"),
    spec("turned_down", Takes::Whole { least: 0, most: 50 }, "comfort"),
    spec("level_letdown", LEVEL, "setting"),
    spec("vacuum_letdown", VACUUM, "setting"),
    spec("cycles_letdown", SPEED, "setting"),
    spec("level_expression", LEVEL, "setting"),
    spec("vacuum_expression", VACUUM, "setting"),
    spec("cycles_expression", SPEED, "setting"),
    spec("note", NOTE, "note"),
    spec("gap_before", Takes::Choice(&["whole", "missed"]), ""),
    spec("amount_is_right", Takes::Flag, ""),
    spec("settled", Takes::Flag, ""),
    spec("afterwards", Takes::Flag, ""),
    spec("asked", Takes::Moment, ""),
];
