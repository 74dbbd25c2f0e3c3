package drawwell.ui.look

import androidx.compose.ui.graphics.Color

/**
 * A ground and what may be drawn on it. Nothing in the shell is written or
 * drawn but through a tone, so a test over all tones is a test over the app.
 */
data class Tone(
    val ground: Color,
    /** Words, and signs that stand for words. */
    val ink: Color,
    /** Smaller, calmer words. */
    val soft: Color,
    /** Lines and shapes that carry meaning. */
    val edge: Color,
)
