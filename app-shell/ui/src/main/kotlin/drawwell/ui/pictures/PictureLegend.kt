package drawwell.ui.pictures

import androidx.compose.foundation.Canvas
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.size
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.graphics.drawscope.Stroke
import androidx.compose.ui.unit.dp
import drawwell.ui.look.LocalColours
import drawwell.ui.look.LocalLettering
import drawwell.ui.parts.Words
import drawwell.ui.pictures.Ranges.range

/** Under a picture: each of its ranges by its own lines, and what the other signs mean. */
@Composable
internal fun PictureLegend(ranges: List<String>, legend: String, modifier: Modifier = Modifier) {
    val lettering = LocalLettering.current
    if (legend.isEmpty() && ranges.all { it.isEmpty() }) return
    Column(modifier.fillMaxWidth(), Arrangement.spacedBy(4.dp)) {
        ranges.forEachIndexed { place, label ->
            if (label.isNotEmpty()) {
                Row(horizontalArrangement = Arrangement.spacedBy(8.dp), verticalAlignment = Alignment.CenterVertically) {
                    RangeSwatch(place)
                    Words(label, lettering.tick)
                }
            }
        }
        Words(legend, lettering.tick, soft = true)
    }
}

@Composable
private fun RangeSwatch(place: Int) {
    val colours = LocalColours.current
    Canvas(Modifier.size(26.dp, 14.dp)) {
        val line = 1.5.dp.toPx()
        val area = Rect(Offset(line / 2, line / 2), Offset(size.width - line / 2, size.height - line / 2))
        range(area, place, colours)
        drawRect(colours.plain.edge, area.topLeft, area.size, style = Stroke(line))
    }
}
