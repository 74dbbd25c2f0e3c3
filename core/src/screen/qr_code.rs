//! A QR code (ISO/IEC 18004) of a line of text.

use qrcode::{Color, EcLevel, QrCode};

use super::shapes::Matrix;
use crate::trouble::{Kind, Trouble};

/// The quiet zone around it, in modules.
const QUIET: usize = 4;

/// The code with its quiet zone.
pub(super) fn matrix(text: &str) -> Result<Matrix, Trouble> {
    let code = QrCode::with_error_correction_level(text.as_bytes(), EcLevel::M)
        .map_err(|_| Trouble::new(Kind::Fault, "trouble-fault"))?;
    let width = code.width();
    let size = width + 2 * QUIET;
    let colors = code.to_colors();
    let dark = (0..size * size)
        .map(|place| {
            let (row, column) = (place / size, place % size);
            let inside = |at: usize| at.checked_sub(QUIET).filter(|at| *at < width);
            match (inside(row), inside(column)) {
                (Some(row), Some(column)) => colors.get(row * width + column) == Some(&Color::Dark),
                _ => false,
            }
        })
        .collect();
    Ok(Matrix { size: size as u32, dark })
}

/// The same as a picture for a page: a square a dark module.
pub(super) fn svg(text: &str) -> Result<String, Trouble> {
    let code = matrix(text)?;
    let size = code.size as usize;
    let dark = code.dark.iter().enumerate().filter(|(_, dark)| **dark);
    let squares: String =
        dark.map(|(place, _)| format!("M{} {}h1v1h-1z", place % size.max(1), place / size.max(1))).collect();
    Ok(format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {size} {size}\" shape-rendering=\"crispEdges\"><path d=\"{squares}\"/></svg>"
    ))
}
