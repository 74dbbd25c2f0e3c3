//! Decimal numbers as people type them.

/// Why a text is not a number that can be taken.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NotANumber {
    /// Nothing, or no figure in it.
    NoFigure,
    /// `4,000` may be four or four thousand.
    Ambiguous,
}

/// Reads a decimal number with a point or a comma. One separator only; a comma
/// before exactly three figures is refused, for it may group thousands.
///
/// ```
/// use drawwell_base::quantity::{parse_decimal, NotANumber};
/// assert_eq!(parse_decimal("62,5"), Ok(62.5));
/// assert_eq!(parse_decimal("4,000"), Err(NotANumber::Ambiguous));
/// ```
///
/// # Errors
/// [`NotANumber`] where it is none, or may be read in two ways.
pub fn parse_decimal(text: &str) -> Result<f64, NotANumber> {
    let text = text.trim();
    let (negative, digits) = match text.strip_prefix(['-', '\u{2212}']) {
        Some(rest) => (true, rest),
        None => (false, text),
    };
    let separators = digits.matches([',', '.']).count();
    let allowed = digits.chars().all(|c| c.is_ascii_digit() || c == '.' || c == ',');
    if !allowed || !digits.contains(|c: char| c.is_ascii_digit()) || digits.len() > 24 {
        return Err(NotANumber::NoFigure);
    }
    if separators > 1 {
        return Err(NotANumber::Ambiguous);
    }
    if let Some((whole, part)) = digits.split_once(',') {
        if part.len() == 3 && !whole.is_empty() && whole != "0" {
            return Err(NotANumber::Ambiguous);
        }
    }
    let value: f64 = digits.replace(',', ".").parse().map_err(|_| NotANumber::NoFigure)?;
    Ok(if negative { -value } else { value })
}

/// How a figure is rounded where it is said. The ends of a range go outward, so that what is
/// read holds all that was reckoned.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Rounding {
    /// To the nearest.
    #[default]
    Nearest,
    /// Down, for a lower end.
    Down,
    /// Up, for an upper end and for an error.
    Up,
}

/// So much of a step beyond it is what computing leaves, and no reason for one more.
const HAIR: f64 = 1e-6;

impl Rounding {
    /// A value in whole steps.
    pub fn to_step(self, value: f64, step: f64) -> f64 {
        let steps = value / step;
        step * match self {
            Self::Nearest => steps.round(),
            Self::Down => (steps + HAIR).floor(),
            Self::Up => (steps - HAIR).ceil(),
        }
    }

    /// Writes a number with at most so many places, as [`say_decimal`] does.
    pub fn say(self, value: f64, places: usize) -> String {
        let step = 10_f64.powi(-i32::try_from(places).unwrap_or(0));
        match self {
            Self::Nearest => say_decimal(value, places),
            _ => say_decimal(self.to_step(value, step), places),
        }
    }
}

/// Writes a number with at most so many places, without trailing zeros.
pub fn say_decimal(value: f64, places: usize) -> String {
    let text = format!("{value:.places$}");
    let text = match text.contains('.') {
        true => text.trim_end_matches('0').trim_end_matches('.').to_owned(),
        false => text,
    };
    if text == "-0" {
        "0".to_owned()
    } else {
        text
    }
}
