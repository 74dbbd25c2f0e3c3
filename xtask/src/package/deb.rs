//! The tree as a package for Debian.

use std::{
    collections::BTreeSet,
    fs,
    path::{Path, PathBuf},
    process::Command,
};

use super::{
    tree::{filled, template, Tree},
    VERSION,
};
use crate::{keep, place::Places, process, stop::Stop};

/// The most that it may take to fetch.
const LARGEST: u64 = 120 * 1_000_000;

pub(super) fn pack(places: &Places, tree: &Tree) -> Result<PathBuf, Stop> {
    let root = places.packages().join("deb");
    let usr = root.join("usr");
    fs::create_dir_all(&root).map_err(|error| Stop::at(&root, &error))?;
    process::run(Command::new("cp").arg("-a").arg(tree.folder()).arg(&usr))?;
    let arch = process::output(Command::new("dpkg").arg("--print-architecture"))?.trim().to_owned();
    let kilobytes = size_of(&usr)? / 1024;
    let depends = depends(&usr)?;
    let control = filled(
        &template(places, "control")?,
        &[("VERSION", VERSION), ("ARCH", &arch), ("SIZE", &kilobytes.to_string()), ("DEPENDS", &depends)],
    );
    keep::write_if_changed(&root.join("DEBIAN").join("control"), control.as_bytes())?;
    let file = places.packages().join(format!("drawwell_{VERSION}_{arch}.deb"));
    let mut pack = Command::new("dpkg-deb");
    process::run(pack.args(["--root-owner-group", "-Zxz", "--build"]).arg(&root).arg(&file))?;
    fs::remove_dir_all(&root).map_err(|error| Stop::at(&root, &error))?;
    let size = fs::metadata(&file).map_err(|error| Stop::at(&file, &error))?.len();
    if size > LARGEST {
        return Err(Stop::new(format!("{}: {size} bytes, more than {LARGEST}", file.display())));
    }
    println!("{}: {:.1} MB, {:.0} MB installed", file.display(), size as f64 / 1e6, kilobytes as f64 / 1e3);
    Ok(file)
}

/// The packages of all libraries that ours load, by the loader and by dpkg; and letters, which
/// Java asks fontconfig for.
fn depends(usr: &Path) -> Result<String, Stop> {
    let mut outside = BTreeSet::new();
    for name in keep::below(usr, "so")? {
        let told = process::output(Command::new("ldd").arg(usr.join(name)))?;
        outside.extend(loaded(&told).map(PathBuf::from));
    }
    let mut packages: BTreeSet<String> = ["fontconfig", "fonts-dejavu-core"].map(str::to_owned).into();
    for path in outside.iter().filter(|path| !path.starts_with(usr)) {
        let owner = owner(path)?;
        packages.extend(owner.split(':').next().map(str::to_owned));
    }
    Ok(packages.into_iter().collect::<Vec<_>>().join(", "))
}

/// What dpkg knows it under: the loader's path, the file behind its links, or that one from
/// before `/lib` was brought into `/usr`.
fn owner(path: &Path) -> Result<String, Stop> {
    let real = fs::canonicalize(path).map_err(|error| Stop::at(path, &error))?;
    let before = real.strip_prefix("/usr").map(|rest| Path::new("/").join(rest));
    let names = [Some(path.to_path_buf()), Some(real), before.ok()];
    let mut asked = names.into_iter().flatten().map(|name| {
        let told = Command::new("dpkg-query").arg("-S").arg(name).output();
        told.ok().filter(|told| told.status.success()).map(|told| String::from_utf8_lossy(&told.stdout).into_owned())
    });
    asked.find_map(|told| told).ok_or_else(|| Stop::new(format!("{}: of no package", path.display())))
}

/// The paths in what `ldd` says.
fn loaded(told: &str) -> impl Iterator<Item = &str> {
    told.lines().filter_map(|line| line.split_once("=> ")?.1.split_whitespace().next()).filter(|it| it.starts_with('/'))
}

fn size_of(folder: &Path) -> Result<u64, Stop> {
    let told = process::output(Command::new("du").args(["-sk", "--apparent-size"]).arg(folder))?;
    let kilobytes: u64 = told.split_whitespace().next().and_then(|it| it.parse().ok()).unwrap_or_default();
    Ok(kilobytes * 1024)
}

#[cfg(test)]
mod tests {
    use super::loaded;

    #[test]
    fn the_loader_says_what_is_loaded_from_where() {
        let told = "\tlinux-vdso.so.1 (0x00007ffd)\n\tlibc.so.6 => /lib/x86_64-linux-gnu/libc.so.6 (0x00007f)\n\tlibjvm.so => not found\n\t/lib64/ld-linux-x86-64.so.2 (0x00)\n";
        assert_eq!(loaded(told).collect::<Vec<_>>(), ["/lib/x86_64-linux-gnu/libc.so.6"]);
    }
}
