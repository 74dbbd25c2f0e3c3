package drawwell.ui.pictures

import androidx.compose.foundation.Canvas
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.unit.dp
import drawwell.ui.look.LocalColours
import drawwell.ui.pictures.Water.shaft
import drawwell.ui.pictures.Water.water

/** The well as one stands before it for the first time: two wide columns, each at its own line. */
@Composable
internal fun WellWater(modifier: Modifier = Modifier) {
    val colours = LocalColours.current
    Canvas(modifier) {
        val gap = 12.dp.toPx()
        val wide = (size.width - gap) / 2
        listOf(0f to LEFT, wide + gap to RIGHT).forEach { (from, height) ->
            val area = Rect(Offset(from, 0f), Offset(from + wide, size.height))
            shaft(area, colours)
            water(area, height, colours)
        }
    }
}

private const val LEFT = 0.62f
private const val RIGHT = 0.42f
