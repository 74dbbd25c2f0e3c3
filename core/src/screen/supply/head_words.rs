//! The words on top.

pub(in crate::screen) struct HeadWords {
    pub(in crate::screen) headline: String,
    pub(in crate::screen) figure: String,
    pub(in crate::screen) caption: String,
    pub(in crate::screen) lines: Vec<String>,
}
