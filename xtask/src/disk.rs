//! Room on the disk, said when something failed.

use std::process::{Command, Stdio};

use crate::place::Places;

/// With less than this left, what failed may have failed for it.
const LITTLE: u64 = 512;

/// A line, where there is hardly any room left.
pub(crate) fn full(places: &Places) -> Option<String> {
    let told = Command::new("df").arg("-Pk").arg(places.scratch().parent()?).stdin(Stdio::null()).output().ok()?;
    let left = left_in(&String::from_utf8_lossy(&told.stdout))?;
    (left < LITTLE).then(|| format!("The disk is nearly full: {left} MB are left. A whole build takes about 6 GB."))
}

/// Megabytes, in what `df -Pk` says (POSIX: a heading, then one line, its fourth column).
fn left_in(told: &str) -> Option<u64> {
    let kilobytes: u64 = told.lines().nth(1)?.split_whitespace().nth(3)?.parse().ok()?;
    Some(kilobytes / 1024)
}

#[cfg(test)]
mod tests {
    use super::left_in;

    #[test]
    fn the_fourth_column_is_what_is_left() {
        let told = "Filesystem     1024-blocks     Used Available Capacity Mounted on\n/dev/vda          264104960 40000000    204800      99% /\n";
        assert_eq!(left_in(told), Some(200));
        assert_eq!(left_in("df: no such file\n"), None);
    }
}
