package drawwell.ui.pictures

import androidx.compose.foundation.Canvas
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.semantics.clearAndSetSemantics
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.testTag
import androidx.compose.ui.text.rememberTextMeasurer
import androidx.compose.ui.unit.dp
import drawwell.surface.WeeksPicture
import drawwell.ui.look.LocalColours
import drawwell.ui.look.LocalLettering
import drawwell.ui.pictures.CourseRibbon.aim
import drawwell.ui.pictures.CourseRibbon.breaks
import drawwell.ui.pictures.CourseRibbon.ribbon
import drawwell.ui.pictures.WeekBars.bar

/** What was made over days or weeks, its course with its range, where it changed, the aim. `bare` leaves the words out. */
@Composable
internal fun WeeksPictureView(weeks: WeeksPicture, modifier: Modifier = Modifier, name: String = "weeks-picture", bare: Boolean = false) {
    val colours = LocalColours.current
    val measurer = rememberTextMeasurer()
    val style = LocalLettering.current.tick.copy(color = colours.page.soft)
    val words = StripWords(measurer, style, style)
    Canvas(
        modifier.fillMaxWidth().clearAndSetSemantics {
            contentDescription = weeks.spoken
            testTag = name
        },
    ) {
        val line = words.line()
        val above = if (weeks.breaks.isEmpty()) line / 2 else line + 8.dp.toPx()
        val beside = if (bare) 0f else weeks.scale.maxOfOrNull { measurer.measure(it.label, style).size.width + 8.dp.toPx() } ?: 0f
        val below = if (bare) 2.dp.toPx() else line + 6.dp.toPx()
        val area = Rect(0f, above, size.width - beside, size.height - below)
        if (!bare) heightScale(weeks.scale, area, measurer, style, colours)
        weeks.bars.forEach { bar(it, area, colours) }
        drawLine(colours.page.edge, area.bottomLeft, area.bottomRight, 1.5.dp.toPx())
        ribbon(weeks.ribbon, area, colours)
        breaks(weeks.breaks, area, measurer, style, colours)
        weeks.aim?.let { aim(it, area, measurer, style, colours) }
        if (!bare) words.run { ticks(weeks.ticks.map { it.copy(at = it.at * area.width / size.width) }, size.height - line) }
    }
}
