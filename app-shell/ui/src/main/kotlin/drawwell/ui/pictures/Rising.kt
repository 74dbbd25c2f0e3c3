package drawwell.ui.pictures

import androidx.compose.animation.core.animateFloatAsState
import androidx.compose.animation.core.snap
import androidx.compose.animation.core.tween
import androidx.compose.runtime.Composable
import androidx.compose.runtime.State
import drawwell.ui.look.LocalMotion

/**
 * A height that rises to where it should be; at night, or where less movement is asked for, it is simply there,
 * and so it is while a thumb holds it. To be read while drawing, so that nothing else is done for it.
 */
@Composable
internal fun rising(height: Float, held: Boolean = false): State<Float> {
    val moves = LocalMotion.current && !held
    return animateFloatAsState(height, if (moves) tween(RISE) else snap(), label = "water line")
}

private const val RISE = 420
