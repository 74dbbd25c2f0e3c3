package drawwell.ui.look

import androidx.compose.ui.unit.dp

/** Distances that hold on every screen. */
object Measures {
    /** The least size of anything that a thumb has to hit. */
    val target = 56.dp

    /** The least distance between two such things. */
    val apart = 8.dp

    /** From the edge of the screen to what is on it. */
    val margin = 16.dp

    /** Between groups that are different things. */
    val rest = 20.dp
    val round = 14.dp

    /** The widest that one column of things becomes on a large window. */
    val widest = 560.dp

    /** The part of the screen, from the top, that is for the eye and not for the thumb. */
    const val EYES = 0.4f

    /** The same where there is a picture as wide as a night, and little to touch. */
    const val EYES_WIDE = 0.56f
}
