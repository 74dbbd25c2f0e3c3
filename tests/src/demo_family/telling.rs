//! The whole record, in order.

use drawwell_core::time::Moment;

use super::{
    checks, expressing,
    fact::Fact,
    feeding, growing, keeping, kit,
    milk::Milk,
    rhythm,
    routine::{self, With},
    story, traced,
    tried::Tried,
    upset, visits,
};

/// Every fact of the family's record.
pub fn facts() -> Vec<Fact> {
    let mut facts = kit::facts();
    facts.extend(rhythm::facts());
    facts.extend(upset::facts());
    facts.extend(visits::facts());
    facts.extend(growing::facts());
    facts.extend(checks::facts());
    facts.extend(traced::facts());
    let mut milk = Milk::at_birth();
    let mut tried = Tried::default();
    for day in 0..=story::LAST {
        for (number, doing) in routine::of(day).iter().enumerate() {
            milk.fill_until(day as f64 * 24.0 + doing.second as f64 / 3600.0);
            let fact = match doing.with {
                With::AtBreast => Some(feeding::at_breast(doing, number, &mut milk)),
                With::Given => feeding::given(doing, number),
                _ => Some(tried.take(doing, expressing::session(doing, number, &mut milk))),
            };
            if !story::unlogged(day) {
                facts.extend(fact);
            }
        }
    }
    facts.extend(tried.facts());
    let kept = keeping::facts(&facts);
    facts.extend(kept);
    facts
}

/// The moment at which the record is looked at: the parent is at work, and it
/// is about time again.
pub fn present() -> Moment {
    story::moment(story::LAST, (12 * 60 + 40) * 60)
}

/// That moment as a line of its own: RFC 3339 with the zone's name behind it.
pub fn clock() -> String {
    let present = present();
    format!("{}[{}]\n", present.to_rfc3339().replace(".000", ""), present.zone_name())
}
