//! A plan from the consultant: whose it is, what each part says and would change, and the
//! answer to each. On her desk: what she is writing.

mod above_comfortable;
mod of_desk;
mod page;
mod pumps;
mod rules;
mod says;
mod setting_compared;
mod waits;

pub(super) use of_desk::{say_what_stands, show as show_on_desk, text_for as part_is_for};
pub(super) use page::show;
pub(super) use pumps::{offered as pumps_of_family, FIELD as PUMP_NAME};
pub(super) use rules::{of_part as rule_of_part, show as show_rules};
pub(super) use says::{in_itself as said_in_part, title as title_of_part};
pub(super) use waits::{group, notice};
