//! How much is read of anything that comes from outside: bytes, depth, count and work.
//!
//! The one place for these figures; `docs/trust.md` says the same table to people, and a test
//! holds one to the other. Each is tried on both of its sides in `tests/faults/limits.rs`.

use serde_json::Value;

use crate::time::Span;

/// A sealed file, in bytes: beyond it, it is refused before it is read to its end.
pub const SEALED_FILE: u64 = 48 << 20;
/// What a sealed file unpacks to, in bytes: ten years of a family are a third of it.
pub const UNPACKED: u64 = 128 << 20;
/// A line of a family file or a plan, in bytes.
pub const LINE: usize = 1 << 20;
/// A line of the exchange form, in bytes: a session with all its marks is one.
pub const EXCHANGE_LINE: u64 = 8 << 20;
/// One value of one field, in bytes of JSON: the findings of a trace are the longest.
pub const VALUE: usize = 256 << 10;
/// How deep a value may be nested.
pub const DEPTH: usize = 16;
/// Changes in a family file: fifty years of sessions.
pub const CHANGES: usize = 2_000_000;
/// Values that one change may replace, and that may stand beside each other on one field.
pub const HEADS: usize = 10_000;
/// Devices whose changes a family file may hold.
pub const DEVICES: usize = 1_000;
/// Other phones of the family that a family file may name.
pub const PHONES: usize = 20;
/// The name of a device, a subject or a field, in bytes.
pub const NAME: usize = 200;
/// A phone's own numbers end here; the row of a change in the journal has no more room.
pub const NUMBERS: i64 = (1 << 40) - 1;
/// A consultant's card, in bytes.
pub const CARD: usize = 2000;
/// The name on it, in characters.
pub const CARD_NAME: usize = 80;
/// The parts of a plan.
pub const PLAN_PARTS: usize = 60;
/// How often a plan may be sent again.
pub const PLAN_REVISIONS: u64 = 10_000;
/// The work of a passphrase when one is set, as a power of two (scrypt's N).
pub const WORK_MADE: u8 = 17;
/// The most work of a passphrase that is done when a file comes.
pub const WORK_READ: u8 = 18;
/// Words of a passphrase that is made up here: 77 bits.
pub const PASSPHRASE_WORDS: usize = 6;
/// A passphrase of one's own, in characters at least.
pub const PASSPHRASE: usize = 16;
/// And at least so many of them different.
pub const PASSPHRASE_DIFFERENT: usize = 8;
/// Sealed files that wait for their passphrase at a desk.
pub const WAITING: usize = 20;
/// How far ahead of now a file, a plan or a change may be dated.
pub const AHEAD: Span = Span::hours(24);

/// Whether a value is nested no deeper than [`DEPTH`].
pub fn allow_depth(value: &Value) -> bool {
    fn within(value: &Value, left: usize) -> bool {
        match value {
            Value::Array(all) => left > 0 && all.iter().all(|value| within(value, left - 1)),
            Value::Object(all) => left > 0 && all.values().all(|value| within(value, left - 1)),
            _ => true,
        }
    }
    within(value, DEPTH)
}
