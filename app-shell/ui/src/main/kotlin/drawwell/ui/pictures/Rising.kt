package drawwell.ui.pictures

import androidx.compose.animation.core.animateFloatAsState
import androidx.compose.animation.core.snap
import androidx.compose.animation.core.tween
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import drawwell.ui.look.LocalMotion

/**
 * A height that rises to where it should be; at night, or where less movement is asked for, it is simply there,
 * and so it is while a thumb holds it.
 */
@Composable
internal fun rising(height: Float, held: Boolean = false): Float {
    val moves = LocalMotion.current && !held
    val risen by animateFloatAsState(height, if (moves) tween(RISE) else snap(), label = "water line")
    return risen
}

private const val RISE = 420
