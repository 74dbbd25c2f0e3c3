//! The package installed in a Debian root of its own, started, given a file, and removed again.

use std::{
    fs,
    path::{Path, PathBuf},
    process::Command,
};

use super::{make, Core};
use crate::{
    for_others,
    machine::{self, on_path, Tool},
    place::Places,
    process,
    stop::Stop,
};

/// What the new root holds beside the package: a screen without a display, and what a desktop
/// has to know files by.
const BESIDE: &str = "xvfb,shared-mime-info,desktop-file-utils,libglib2.0-bin,procps,ca-certificates";

/// The record of a family, as it is shared.
const FAMILY: &str = "shared.drawwell-family";

/// What is done in there; each line that fails ends it.
const SCRIPT: &str = include_str!("tried.sh");

/// The step of `cargo xtask test`: with the core of the tests, so that nothing is built twice.
pub(crate) fn run(places: &Places) -> Result<(), Stop> {
    let made = make(places, Core::AsTested)?;
    let Some(deb) = made.iter().find(|path| path.extension().is_some_and(|it| it == "deb")) else {
        return Ok(());
    };
    if on_path("apt-get").is_none() || process::output(Command::new("id").arg("-u"))?.trim() != "0" {
        println!("packed; trying it out takes root on Debian, so that was not done here");
        return Ok(());
    }
    machine::need(places, &[Tool::Bootstrap])?;
    let root = places.scratch().join("debian");
    remove(&root)?;
    let outcome = tried(places, &root, deb);
    let removed = remove(&root);
    outcome.and(removed)
}

fn tried(places: &Places, root: &Path, deb: &Path) -> Result<(), Stop> {
    let mut bootstrap = Command::new("mmdebstrap");
    bootstrap.args(["--quiet", "--variant=minbase", &format!("--include={BESIDE}")]);
    process::run(bootstrap.arg(suite()?).arg(root))?;
    let into = root.join("tmp").join("tried");
    fs::create_dir_all(&into).map_err(|error| Stop::at(&into, &error))?;
    for (from, name) in [
        (deb.to_path_buf(), "drawwell.deb"),
        (PathBuf::from("/etc/resolv.conf"), "resolv.conf"),
        (for_others::write(places)?.join(FAMILY), FAMILY),
    ] {
        let to = into.join(name);
        fs::copy(&from, &to).map_err(|error| Stop::at(&from, &error))?;
    }
    let script = into.join("tried.sh");
    fs::write(&script, SCRIPT).map_err(|error| Stop::at(&script, &error))?;
    // Its own mounts, which are gone with it however it ends.
    let mut inside = Command::new("unshare");
    inside.args(["--mount", "--pid", "--fork", "sh", "-c"]);
    inside.arg("mount -t proc proc \"$1/proc\" && exec chroot \"$1\" sh /tmp/tried/tried.sh");
    process::run(inside.arg("sh").arg(root).env("LC_ALL", "C.UTF-8"))?;
    for name in ["now", "family"] {
        let picture = Picture::read(&into.join(format!("{name}.xwd")))?;
        let file = places.packages().join(format!("{name}.ppm"));
        fs::write(&file, picture.ppm()).map_err(|error| Stop::at(&file, &error))?;
        let colours = picture.colours();
        if colours < COLOURS {
            return Err(Stop::new(format!("{}: {colours} colours, so no window", file.display())));
        }
        println!("{}", file.display());
    }
    Ok(())
}

/// A bare screen has one or two; a window with letters on it has hundreds.
const COLOURS: usize = 50;

fn suite() -> Result<String, Stop> {
    let file = Path::new("/etc/os-release");
    let text = fs::read_to_string(file).map_err(|error| Stop::at(file, &error))?;
    let suite = text.lines().find_map(|line| line.strip_prefix("VERSION_CODENAME="));
    suite.map(|it| it.trim_matches('"').to_owned()).ok_or_else(|| Stop::new("this system has no code name"))
}

fn remove(folder: &Path) -> Result<(), Stop> {
    if !folder.exists() {
        return Ok(());
    }
    fs::remove_dir_all(folder).map_err(|error| Stop::at(folder, &error))
}

/// What the screen held, in the form in which Xvfb keeps it (X11's XWDFile.h): a heading of
/// big-endian words, a colour table, then lines of four bytes a dot, blue first.
#[derive(Debug)]
struct Picture {
    wide: usize,
    tall: usize,
    line: usize,
    dots: Vec<u8>,
}

impl Picture {
    fn read(file: &Path) -> Result<Self, Stop> {
        let bytes = fs::read(file).map_err(|error| Stop::at(file, &error))?;
        Self::of(&bytes).ok_or_else(|| Stop::new(format!("{}: no picture of a screen", file.display())))
    }

    fn of(bytes: &[u8]) -> Option<Self> {
        let word = |index: usize| {
            let four: [u8; 4] = bytes.get(index * 4..index * 4 + 4)?.try_into().ok()?;
            usize::try_from(u32::from_be_bytes(four)).ok()
        };
        let (heading, wide, tall, line, colours) = (word(0)?, word(4)?, word(5)?, word(12)?, word(19)?);
        let from = heading + colours * 12;
        Some(Self { wide, tall, line, dots: bytes.get(from..from + line * tall)?.to_vec() })
    }

    fn rows(&self) -> impl Iterator<Item = &[u8]> {
        self.dots.chunks(self.line).filter_map(|line| line.get(..self.wide * 4))
    }

    fn colours(&self) -> usize {
        self.rows().flat_map(|row| row.chunks(4)).collect::<std::collections::HashSet<_>>().len()
    }

    /// In a form that every viewer opens.
    fn ppm(&self) -> Vec<u8> {
        let mut file = format!("P6 {} {} 255\n", self.wide, self.tall).into_bytes();
        for dot in self.rows().flat_map(|row| row.chunks(4)) {
            file.extend(dot.iter().take(3).rev());
        }
        file
    }
}

#[cfg(test)]
mod tests {
    use super::Picture;

    #[test]
    fn the_screen_is_read_dot_by_dot() {
        let mut bytes: Vec<u8> = Vec::new();
        let mut words = [0u32; 25];
        for (index, value) in [(0, 100), (4, 2), (5, 1), (12, 12), (19, 1)] {
            words[index] = value;
        }
        bytes.extend(words.iter().flat_map(|word| word.to_be_bytes()));
        bytes.extend([0; 12]);
        bytes.extend([3, 2, 1, 0, 6, 5, 4, 0, 9, 9, 9, 9]);
        let picture = Picture::of(&bytes).unwrap();
        assert_eq!((picture.wide, picture.tall, picture.colours()), (2, 1, 2));
        assert_eq!(picture.ppm(), b"P6 2 1 255\n\x01\x02\x03\x04\x05\x06");
        assert!(Picture::of(&bytes[..120]).is_none());
    }
}
