//! Visits with the consultant, and what is to be asked at the next one.

use drawwell_core::record::Kind;

use super::{
    fact::Fact,
    story::{self, FEVER},
};

/// Visits, questions, and the caution that was dealt with.
pub(super) fn facts() -> Vec<Fact> {
    let visit = |day: i64, hour: f64| {
        Fact::new(Kind::Visit, format!("visit-{}", story::date(day)))
            .when("at", &story::moment(day, (hour * 3600.0) as i64))
    };
    let question = |day: i64, hour: f64, text: &str| {
        Fact::new(Kind::Question, format!("question-{}", story::date(day)))
            .when("at", &story::moment(day, (hour * 3600.0) as i64))
            .says("question", text)
    };
    vec![
        visit(33, 10.0).says("note", "Flanges measured, smaller ones on the way."),
        visit(127, 10.5).says("note", "All well. Try the shift breaks."),
        visit(158, 11.0),
        question(110, 21.0, "Can one side stay smaller for good?").yes("answered"),
        question(148, 22.0, "Is one long sleep a night all right, now that it is five times a day?"),
        question(153, 20.4, "How long may it stay in the cool bag on the way home?"),
        Fact::new(Kind::CautionDealt, format!("caution-{}", story::date(FEVER)))
            .when("at", &story::moment(FEVER, (9.6 * 3600.0) as i64))
            .says("caution", "breast-fever")
            .when("seen", &story::moment(FEVER, (9.2 * 3600.0) as i64)),
    ]
}
