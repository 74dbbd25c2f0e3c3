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
    Canvas(
        modifier.fillMaxWidth().clearAndSetSemantics {
            contentDescription = hours.spoken
            testTag = "hours-picture"
        },
    ) {
        val line = words.line()
        val beside = hours.scale.maxOfOrNull { measurer.measure(it.label, style).size.width + 8.dp.toPx() } ?: 0f
        val area = Rect(0f, line / 2, size.width - beside, size.height - line - 6.dp.toPx())
        heightScale(hours.scale, area, measurer, style, colours)
        hours.bars.forEach { hour(it, area, colours) }
        drawLine(colours.page.edge, area.bottomLeft, area.bottomRight, 1.5.dp.toPx())
        words.run { ticks(hours.ticks.map { it.copy(at = it.at * area.width / size.width) }, size.height - line) }
    }
}

private fun DrawScope.hour(bar: HourBar, area: Rect, colours: Colours) {
    val height = bar.height ?: return
    val gap = 1.5.dp.toPx()
    val left = area.left + bar.from * area.width + gap / 2
    val right = area.left + bar.to * area.width - gap / 2
    val top = area.bottom - height * area.height
    drawRect(colours.water.ground, Offset(left, top), Size(right - left, area.bottom - top))
    drawLine(colours.shaft.edge, Offset(left, top), Offset(right, top), 2.dp.toPx())
    val middle = (left + right) / 2
    val (low, high) = listOf(bar.low, bar.high).map { area.bottom - it * area.height }
    drawLine(colours.page.ground, Offset(middle, low), Offset(middle, high), 4.dp.toPx())
    drawLine(colours.running.edge, Offset(middle, low), Offset(middle, high), 1.5.dp.toPx(), StrokeCap.Round)
}
