package drawwell.ui.pictures

import androidx.compose.foundation.Canvas
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.semantics.clearAndSetSemantics
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.testTag
import androidx.compose.ui.text.rememberTextMeasurer
import androidx.compose.ui.unit.dp
import drawwell.surface.DayPicture
import drawwell.ui.look.LocalColours
import drawwell.ui.look.LocalLettering

/** The day along its clock. */
@Composable
internal fun DayPictureView(day: DayPicture, modifier: Modifier = Modifier) {
    val colours = LocalColours.current
    val measurer = rememberTextMeasurer()
    val style = LocalLettering.current.tick.copy(color = colours.page.soft)
    val words = StripWords(measurer, style, style)
    Canvas(
        modifier.fillMaxWidth().clearAndSetSemantics {
            contentDescription = day.spoken
            testTag = "day-picture"
        },
    ) {
        val below = words.line()
        val area = Rect(0f, below / 2, size.width, size.height - below - 18.dp.toPx())
        heightScale(day.scale, area, measurer, style, colours)
        drawLine(colours.page.edge, area.bottomLeft, area.bottomRight, 1.5.dp.toPx())
        day.bars.forEach { with(DayBars) { bar(it, area, colours) } }
        day.now?.let {
            val x = it * size.width
            drawLine(colours.running.edge, Offset(x, area.top), Offset(x, area.bottom + 6.dp.toPx()), 2.dp.toPx())
            drawCircle(colours.running.edge, 4.dp.toPx(), Offset(x, area.top))
        }
        words.run { ticks(day.ticks, size.height - below) }
    }
}
