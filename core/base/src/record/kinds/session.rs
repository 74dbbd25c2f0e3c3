//! Fields of a session.

use super::field_spec::{spec, FieldSpec, CHILD_MASS, LEVEL, NOTE, PAIN, SPEED, VACUUM};
use crate::record::choices::{FELT, METHODS, SIDES, WHERE};
use crate::record::{FieldType, Kind};

pub(super) const SESSION: &[FieldSpec] = &[
    spec("started", FieldType::Moment, "when"),
    spec("ended", FieldType::Moment, "when"),
    spec("amount_left", FieldType::Amount, "amount"),
    spec("amount_right", FieldType::Amount, "amount"),
    spec("amount_together", FieldType::Amount, "amount"),
    spec("weight_before", CHILD_MASS, "weighing"),
    spec("weight_after", CHILD_MASS, "weighing"),
    spec("child", FieldType::Refers(Kind::Child), "weighing"),
    spec("method", FieldType::Choice(METHODS), "how"),
    spec("sides", FieldType::Choice(SIDES), "how"),
    spec("pump", FieldType::Refers(Kind::Pump), "how"),
    spec("flange_left", FieldType::Refers(Kind::Flange), "how"),
    spec("flange_right", FieldType::Refers(Kind::Flange), "how"),
    spec("where", FieldType::Choice(WHERE), "how"),
    spec("hands_on", FieldType::Flag, "how"),
    spec("letdowns", FieldType::Whole { least: 0, most: 20 }, "letdown"),
    spec("letdown_felt", FieldType::Choice(FELT), "letdown"),
    spec("pain_left_letdown", PAIN, "comfort"),
    spec("pain_left_expression", PAIN, "comfort"),
    spec("pain_right_letdown", PAIN, "comfort"),
    spec("pain_right_expression", PAIN, "comfort"),
    spec("turned_down", FieldType::Whole { least: 0, most: 50 }, "comfort"),
    spec("level_letdown", LEVEL, "setting"),
    spec("vacuum_letdown", VACUUM, "setting"),
    spec("cycles_letdown", SPEED, "setting"),
    spec("level_expression", LEVEL, "setting"),
    spec("vacuum_expression", VACUUM, "setting"),
    spec("cycles_expression", SPEED, "setting"),
    spec("note", NOTE, "note"),
    spec("gap_before", FieldType::Choice(&["whole", "missed"]), ""),
    spec("amount_is_right", FieldType::Flag, ""),
    spec("settled", FieldType::Flag, ""),
    spec("afterwards", FieldType::Flag, ""),
    spec("asked", FieldType::Moment, ""),
];
