package drawwell.ui.pictures

import androidx.compose.foundation.Canvas
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.geometry.Size
import androidx.compose.ui.graphics.StrokeCap
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.semantics.clearAndSetSemantics
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.testTag
import androidx.compose.ui.text.rememberTextMeasurer
import androidx.compose.ui.unit.dp
import drawwell.surface.HourBar
import drawwell.surface.HoursPicture
import drawwell.ui.look.Colours
import drawwell.ui.look.LocalColours
import drawwell.ui.look.LocalLettering

/** How fast milk is made at each hour, with where half of the days lie. */
@Composable
internal fun HoursPictureView(hours: HoursPicture, modifier: Modifier = Modifier) {
    val colours = LocalColours.current
    val measurer = rememberTextMeasurer()
    val style = LocalLettering.current.tick.copy(color = colours.page.soft)
    val words = StripWords(measurer, style, style)
    val scale = SideScale(hours.scale, null, false, measurer, style)
    Canvas(
        modifier.fillMaxWidth().clearAndSetSemantics {
            contentDescription = hours.spoken
            testTag = "hours-picture"
        },
    ) {
        val line = words.line()
        val (above, beside) = with(scale) { above() to beside() }
        val area = Rect(0f, above, size.width - beside, size.height - line - 8.dp.toPx())
        with(scale) { draw(area, colours) }
        hours.bars.forEach { hour(it, area, colours) }
        drawLine(colours.page.edge, area.bottomLeft, area.bottomRight, 1.5.dp.toPx())
        words.run { ticks(hours.ticks, size.height - line, area.width) }
    }
}

/** The middle as a bar, and from it to both ends a thin line. */
private fun DrawScope.hour(bar: HourBar, area: Rect, colours: Colours) {
    val height = bar.height ?: return
    val gap = 2.dp.toPx()
    val left = area.left + bar.from * area.width + gap / 2
    val right = area.left + bar.to * area.width - gap / 2
    fun y(at: Float) = area.bottom - at * area.height
    drawRect(colours.bars.ground, Offset(left, y(height)), Size(right - left, area.bottom - y(height)))
    drawLine(colours.bars.edge, Offset(left, y(height)), Offset(right, y(height)), 2.dp.toPx())
    val middle = (left + right) / 2
    drawLine(colours.bars.soft, Offset(middle, y(bar.low)), Offset(middle, y(bar.high)), 1.5.dp.toPx(), StrokeCap.Round)
}
