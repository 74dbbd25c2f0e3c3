//! A damaged file that is sealed, read page by page: the cipher refuses a page of which one bit is
//! wrong, and everything after it. Here each page is taken as it is, in memory alone; what of it
//! is a change is told by the change's own checksum.
//!
//! The form is SQLCipher's own (its documentation, "Design"): AES-256 in CBC mode, a page's
//! random beginning behind its contents, and a sum behind that.

use std::path::Path;

use aes::cipher::block_padding::NoPadding;
use aes::cipher::{BlockDecryptMut, KeyIvInit};
use rusqlite::Connection;

use super::key::BEGINNING;
use super::{memory, Key};
use crate::private_file::PLAIN_STORE;
use crate::trouble::{Kind, Trouble};

/// Bytes of a page.
pub(super) const PAGE: usize = 4096;
const RANDOM: usize = 16;
/// What is kept free at the end of a page: what it begins with, and its sum.
const FREE: usize = 80;
/// Of fewer pages nothing can be told.
const ENOUGH: usize = 4;
/// No record of a family is longer; it is read into memory.
const MOST: u64 = 512 << 20;

/// A file's pages, read with a key, whatever their sums say.
fn pages(path: &Path, key: &Key) -> Result<Vec<u8>, Trouble> {
    let damaged = || Trouble::new(Kind::Damaged, "trouble-damaged");
    if std::fs::metadata(path).map_err(|_| damaged())?.len() > MOST {
        return Err(damaged());
    }
    let mut bytes = std::fs::read(path).map_err(|_| damaged())?;
    bytes.truncate(bytes.len() / PAGE * PAGE);
    let secret = key.bytes();
    for (number, page) in bytes.chunks_exact_mut(PAGE).enumerate() {
        // The first page begins with which key it is.
        let skipped = if number == 0 { BEGINNING } else { 0 };
        let (contents, free) = page.split_at_mut(PAGE - FREE);
        let random = free.get(..RANDOM).ok_or_else(damaged)?;
        let cipher = cbc::Decryptor::<aes::Aes256>::new_from_slices(&secret, random).map_err(|_| damaged())?;
        let contents = contents.get_mut(skipped..).ok_or_else(damaged)?;
        cipher.decrypt_padded_mut::<NoPadding>(contents).map_err(|_| damaged())?;
    }
    Ok(bytes)
}

/// Whether a key fits a file of which the first page can't be read: most of its other pages then
/// begin as those of a store do, and with another key five in 256 would.
pub(super) fn fits(path: &Path, key: &Key) -> bool {
    let Ok(bytes) = pages(path, key) else { return false };
    let others = bytes.chunks_exact(PAGE).skip(1);
    let count = others.len();
    let as_in_a_store = others.filter(|page| matches!(page.first(), Some(0 | 2 | 5 | 10 | 13))).count();
    count >= ENOUGH && as_in_a_store * 2 >= count
}

/// The pages of a file as a store in memory.
pub(super) fn read(path: &Path, key: &Key) -> Result<Connection, Trouble> {
    let damaged = || Trouble::new(Kind::Damaged, "trouble-damaged");
    let mut bytes = pages(path, key)?;
    let count = u32::try_from(bytes.len() / PAGE).map_err(|_| damaged())?;
    let mut write = |at: usize, what: &[u8]| {
        for (place, byte) in bytes.iter_mut().skip(at).zip(what) {
            *place = *byte;
        }
    };
    write(0, PLAIN_STORE);
    // Its page size, no log, what is free in a page, and how many pages there are, whatever
    // it said.
    write(16, &(PAGE as u16).to_be_bytes());
    write(18, &[1, 1, FREE as u8]);
    write(28, &count.to_be_bytes());
    let mut memory = memory::in_memory()?;
    memory.deserialize_read_exact("main", &*bytes, bytes.len(), false)?;
    Ok(memory)
}
