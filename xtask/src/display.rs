//! Whether there is a screen to open a window on.

/// What Java's program ends with where it can't open a window (sysexits.h: EX_UNAVAILABLE).
pub(crate) const NO_WINDOW: i32 = 69;

/// Windows and macOS have one; elsewhere a variable names it.
pub(crate) fn is_there() -> bool {
    named(|name| std::env::var_os(name).is_some_and(|value| !value.is_empty()))
}

fn named(is_set: impl Fn(&str) -> bool) -> bool {
    cfg!(windows) || cfg!(target_os = "macos") || is_set("DISPLAY") || is_set("WAYLAND_DISPLAY")
}

#[cfg(test)]
mod tests {
    #[cfg(target_os = "linux")]
    #[test]
    fn either_variable_names_one() {
        assert!(super::named(|name| name == "DISPLAY"));
        assert!(super::named(|name| name == "WAYLAND_DISPLAY"));
        assert!(!super::named(|_| false));
    }
}
