package drawwell.ui.pictures

import androidx.compose.foundation.Canvas
import androidx.compose.foundation.layout.size
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Size
import androidx.compose.ui.platform.LocalDensity
import androidx.compose.ui.semantics.Role
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.role
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.semantics.testTag
import androidx.compose.ui.unit.Dp
import drawwell.surface.Matrix
import drawwell.ui.look.LocalColours

/**
 * Fields of dark and light, dark on light in every palette, or it could not be scanned. At most as large as `most`;
 * each field takes whole pixels, so that every edge is sharp.
 */
@Composable
internal fun MatrixPicture(matrix: Matrix, spoken: String, most: Dp) {
    val tone = LocalColours.current.code
    val fields = matrix.size.toInt()
    val density = LocalDensity.current
    val field = with(density) { (most.toPx() / fields).toInt().coerceAtLeast(1) }
    val side = with(density) { (field * fields).toDp() }
    val told = Modifier.semantics {
        contentDescription = spoken
        role = Role.Image
        testTag = "card-code"
    }
    Canvas(told.size(side)) {
        drawRect(tone.ground)
        val one = Size(field.toFloat(), field.toFloat())
        matrix.dark.forEachIndexed { place, dark ->
            if (dark) {
                val at = Offset((place % fields * field).toFloat(), (place / fields * field).toFloat())
                drawRect(tone.ink, at, one)
            }
        }
    }
}
