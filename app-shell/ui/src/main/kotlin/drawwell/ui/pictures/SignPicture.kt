package drawwell.ui.pictures

import androidx.compose.foundation.Canvas
import androidx.compose.foundation.layout.size
import androidx.compose.runtime.Composable
import androidx.compose.runtime.remember
import androidx.compose.ui.Modifier
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.graphics.StrokeCap
import androidx.compose.ui.graphics.StrokeJoin
import androidx.compose.ui.graphics.drawscope.Stroke
import androidx.compose.ui.graphics.drawscope.scale
import androidx.compose.ui.graphics.vector.PathParser
import androidx.compose.ui.platform.LocalDensity
import androidx.compose.ui.unit.Dp
import androidx.compose.ui.unit.dp
import drawwell.surface.Sign
import drawwell.ui.look.LocalTone

/** A sign in the ink of the ground it stands on. Says nothing: the words beside it do. */
@Composable
internal fun SignPicture(sign: Sign, modifier: Modifier = Modifier, size: Dp = 24.dp) {
    if (sign == Sign.NONE) return
    val ink = LocalTone.current.ink
    val path = remember(sign) { PathParser().parsePathString(SignStrokes.of(sign)).toPath() }
    val grown = LocalDensity.current.fontScale.coerceIn(1f, MOST)
    Canvas(modifier.size(size * grown)) {
        scale(this.size.width / SignStrokes.FIELD, Offset.Zero) {
            drawPath(path, ink, style = Stroke(SignStrokes.PEN, cap = StrokeCap.Round, join = StrokeJoin.Round))
        }
    }
}

/** Signs grow with the type, but less. */
private const val MOST = 1.5f
