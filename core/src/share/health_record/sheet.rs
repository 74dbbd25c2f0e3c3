//! The visit sheet, as a document with the PDF in it.

use base64::engine::general_purpose::STANDARD;
use base64::Engine;
use serde_json::{json, Value};

use super::codes::Code;
use super::ids;
use super::makes::Makes;
use crate::time::Moment;

pub(super) fn document(makes: &Makes<'_>, pdf: &[u8], now: &Moment) -> (String, Value) {
    let id = ids::id("visit-sheet", "", &now.to_rfc3339());
    let document = json!({
        "resourceType": "DocumentReference",
        "id": id,
        "status": "current",
        "type": Code::thing("visit-sheet").concept(makes.texts()),
        "subject": makes.parent(),
        "date": now.to_rfc3339(),
        "author": [makes.parent()],
        "description": makes.texts().say("not-a-diagnosis-share"),
        "content": [{ "attachment": {
            "contentType": "application/pdf",
            "data": STANDARD.encode(pdf),
            "title": makes.texts().say("code-visit-sheet"),
            "creation": now.to_rfc3339(),
        } }],
    });
    (ids::url(&id), document)
}
