//! What Tavi weighs, as the ward and later the midwife wrote it down.

use drawwell_core::record::Kind;

use super::{
    fact::Fact,
    kit::TAVI,
    story::{self, HOME_TOGETHER, LAST},
};

/// Days between two weighings: on the ward, and at home.
const ON_WARD: usize = 3;
const AT_HOME: usize = 10;

/// Every weighing, in order.
pub(super) fn facts() -> Vec<Fact> {
    let ward = (1..HOME_TOGETHER).step_by(ON_WARD);
    let home = (HOME_TOGETHER + 2..=LAST).step_by(AT_HOME);
    ward.chain(home)
        .map(|day| {
            let grams = (story::tavi_weighs(day as f64) / 10.0).round() * 10.0;
            Fact::new(Kind::Weight, format!("weight-{}", story::date(day)))
                .when("at", &story::moment(day, (9 * 60 + 20) * 60))
                .says("child", TAVI)
                .mass("weight", grams)
        })
        .collect()
}
