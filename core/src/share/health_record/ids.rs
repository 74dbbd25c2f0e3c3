//! Ids that follow from what they stand for, so that a reader knows each again.

use crate::record::Kind;
use uuid::Uuid;

/// What all ids are made under (RFC 4122, version 5): drawn once for this program.
const UNDER: Uuid = Uuid::from_u128(0x3d0c_8f9e_51b7_4a6d_9c2e_7a10_64f2_b5d8);

/// The id of a resource: of a kind of record, a record, and a part of it.
pub(super) fn id(kind: &str, record: &str, part: &str) -> String {
    // A record's id has no slash, so that no two of these are the same text.
    Uuid::new_v5(&UNDER, format!("{kind}/{record}/{part}").as_bytes()).to_string()
}

/// How one resource names another.
pub(super) fn url(id: &str) -> String {
    format!("urn:uuid:{id}")
}

/// The id of the parent, of whom the record knows no more than that they are there.
pub(super) fn parent() -> String {
    id("parent", "", "")
}

/// The id of a device.
pub(super) fn device(kind: Kind, record: &str) -> String {
    id(kind.name(), record, "")
}
