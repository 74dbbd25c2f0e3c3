//! What the typesetter reads from: templates, data and letters that are bundled. It
//! sees no file of the machine, no clock and no network.

use serde_json::Value;
use typst::diag::{FileError, FileResult};
use typst::foundations::{Bytes, Datetime};
use typst::syntax::{FileId, Source, VirtualPath};
use typst::text::{Font, FontBook};
use typst::utils::LazyHash;
use typst::{Library, LibraryExt, World};

use crate::letters;

const MAIN: &str = "/sheet.typ";
const LABELS: &str = "/labels.typ";
const DATA: &str = "/sheet.json";
/// The templates by name.
const TEMPLATES: [(&str, &str); 5] = [
    (MAIN, include_str!("../typ/sheet.typ")),
    (LABELS, include_str!("../typ/labels.typ")),
    ("/look.typ", include_str!("../typ/look.typ")),
    ("/parts.typ", include_str!("../typ/parts.typ")),
    ("/pictures.typ", include_str!("../typ/pictures.typ")),
];

pub(crate) struct SheetWorld {
    library: LazyHash<Library>,
    book: LazyHash<FontBook>,
    data: Bytes,
    main: &'static str,
}

impl SheetWorld {
    pub(crate) fn with(data: &Value) -> Self {
        Self {
            library: LazyHash::new(Library::default()),
            book: LazyHash::new(FontBook::from_fonts(letters::fonts())),
            data: Bytes::new(data.to_string().into_bytes()),
            main: if data.get("form").is_some_and(|form| form == "labels") { LABELS } else { MAIN },
        }
    }
}

fn name(id: FileId) -> String {
    id.vpath().as_rooted_path().to_string_lossy().into_owned()
}

impl World for SheetWorld {
    fn library(&self) -> &LazyHash<Library> {
        &self.library
    }

    fn book(&self) -> &LazyHash<FontBook> {
        &self.book
    }

    fn main(&self) -> FileId {
        FileId::new(None, VirtualPath::new(self.main))
    }

    fn source(&self, id: FileId) -> FileResult<Source> {
        let wanted = name(id);
        match TEMPLATES.iter().find(|(name, _)| *name == wanted) {
            Some((_, text)) => Ok(Source::new(id, (*text).to_owned())),
            None => Err(FileError::AccessDenied),
        }
    }

    fn file(&self, id: FileId) -> FileResult<Bytes> {
        if name(id) == DATA {
            Ok(self.data.clone())
        } else {
            Err(FileError::AccessDenied)
        }
    }

    fn font(&self, index: usize) -> Option<Font> {
        letters::fonts().get(index).cloned()
    }

    /// A sheet is dated by its data.
    fn today(&self, _: Option<i64>) -> Option<Datetime> {
        None
    }
}
