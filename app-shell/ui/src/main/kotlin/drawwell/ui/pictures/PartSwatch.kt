package drawwell.ui.pictures

import androidx.compose.foundation.Canvas
import androidx.compose.foundation.layout.size
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.unit.dp
import drawwell.surface.Part
import drawwell.ui.look.LocalColours

/** The texture that a side has in the picture of the day. */
@Composable
internal fun PartSwatch(part: Part, modifier: Modifier = Modifier) {
    val colours = LocalColours.current
    Canvas(modifier.size(12.dp, 22.dp)) {
        with(DayBars) { filling(part, Rect(Offset.Zero, size), colours) }
    }
}
