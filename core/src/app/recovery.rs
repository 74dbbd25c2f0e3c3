//! The recovery code: words that open a record whose key was lost. The key lies beside the
//! record in an age file that they open, and they lie nowhere.

use std::io::Write;
use std::path::{Path, PathBuf};

use age::secrecy::SecretString;

use super::state::{App, Present};
use crate::journal::{self, files, Journal, Key};
use crate::private_file;
use crate::screen::shapes::{Effect, Tone};
use crate::share::sealed::{self, passphrase, OpenWith, SealFor};
use crate::trouble::{Kind, Trouble};

/// Where the key of a record lies under its recovery code.
fn key_file(path: &Path) -> PathBuf {
    let mut name = path.as_os_str().to_owned();
    name.push(files::RECOVERY);
    PathBuf::from(name)
}

/// Whether a record is sealed, so that it wants a key.
pub fn is_sealed(path: &Path) -> bool {
    journal::is_sealed(path)
}

/// Whether there is a recovery code for the key of a record.
pub fn is_there(path: &Path) -> bool {
    key_file(path).is_file()
}

/// The key of a record, by its recovery code.
///
/// # Errors
/// `recovery-none` where no code was made; `sealed-wrong-passphrase`; `trouble-other-key` where
/// the code is of another key than the record's.
pub fn open(path: &Path, words: &str) -> Result<Key, Trouble> {
    let none = |_| Trouble::new(Kind::Locked, "recovery-none");
    let mut file = private_file::open(&key_file(path)).map_err(none)?;
    let sealed = sealed::read_whole(&mut file)?;
    let words = words.split_whitespace().map(str::to_lowercase).collect::<Vec<_>>().join(" ");
    if words.is_empty() {
        return Err(Trouble::bad("open-passphrase", "bad-passphrase-empty"));
    }
    let figures = sealed::open(&sealed, &OpenWith::Passphrase(words))?;
    let key = Key::from_figures(&String::from_utf8_lossy(&figures))?;
    if !journal::opens(path, &key) {
        return Err(Trouble::new(Kind::Locked, "trouble-other-key"));
    }
    Ok(key)
}

impl App {
    /// Makes a recovery code, in place of the one before, and shows it this once.
    pub(super) fn make_recovery(&mut self) -> Result<Vec<Effect>, Trouble> {
        let key = self.key_in_use().ok_or_else(|| Trouble::new(Kind::BadInput, "recovery-not-sealed"))?;
        self.keep_under_a_code(&key)
    }

    /// Seals a record for which the host has no place to keep a key: its code is asked for at
    /// each start.
    pub(super) fn seal_with_code(&mut self, present: Present) -> Result<Vec<Effect>, Trouble> {
        if self.key_in_use().is_some() || self.journal()?.is_read_only() || self.opening.look_around {
            return Err(Trouble::new(Kind::BadInput, "recovery-sealed-already"));
        }
        let key = Key::make()?;
        // First the code: a record is sealed only with a key that can be had again.
        let effects = self.keep_under_a_code(&key)?;
        drop(self.journal.take());
        self.key = Some(key);
        let opened = Journal::open_with_key(&self.path, &self.opening.device, self.key.as_ref(), present.now);
        match opened {
            Ok(opened) => {
                self.journal = Some(opened.journal);
                self.key_by_code = true;
            }
            Err(trouble) => {
                self.key = None;
                self.offered = None;
                let as_it_was = Journal::open(&self.path, &self.opening.device, present.now)?;
                self.journal = Some(as_it_was.journal);
                return Err(trouble);
            }
        }
        Ok(effects)
    }

    fn keep_under_a_code(&mut self, key: &Key) -> Result<Vec<Effect>, Trouble> {
        let words = passphrase::make()?;
        let sealed = sealed::seal(format!("{}\n", key.figures()).as_bytes(), &SealFor::Passphrase(words.clone()))?;
        // The words are shown only where what they open is kept, and opens.
        let opened = sealed::open(&sealed, &OpenWith::Passphrase(words.clone()))?;
        if Key::from_figures(&String::from_utf8_lossy(&opened))? != *key {
            return Err(Trouble::new(Kind::Fault, "trouble-fault"));
        }
        private_file::whole_or_not(&key_file(&self.path), |file| {
            file.write_all(&sealed).map_err(|_| Trouble::new(Kind::Full, "trouble-cannot-write-file"))
        })?;
        self.offered = Some(SecretString::from(words));
        self.tell("recovery-made", Tone::Quiet);
        Ok(Vec::new())
    }
}
