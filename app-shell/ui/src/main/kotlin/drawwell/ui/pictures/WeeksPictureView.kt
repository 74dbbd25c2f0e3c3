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
import drawwell.ui.pictures.CourseBreaks.dates
import drawwell.ui.pictures.CourseBreaks.gaps
import drawwell.ui.pictures.CourseBreaks.ground
import drawwell.ui.pictures.CourseRibbon.ribbon
import drawwell.ui.pictures.WeekBars.bar

/** What was made over days or weeks, its course with its range, where it changed, the aim. A small one leaves the dates out. */
@Composable
internal fun WeeksPictureView(weeks: WeeksPicture, name: String, modifier: Modifier = Modifier, small: Boolean = false) {
    val colours = LocalColours.current
    val measurer = rememberTextMeasurer()
    val style = LocalLettering.current.tick.copy(color = colours.page.soft)
    val words = StripWords(measurer, style, style)
    val scale = SideScale(weeks.scale, weeks.aim, small, measurer, style)
    Canvas(
        modifier.fillMaxWidth().clearAndSetSemantics {
            contentDescription = weeks.spoken
            testTag = name
        },
    ) {
        val line = words.line()
        val dates = if (weeks.breaks.isEmpty()) 0f else line + CourseBreaks.STEM.toPx()
        val below = if (small) 6.dp.toPx() else line + 8.dp.toPx()
        val (above, beside) = with(scale) { above() to beside() }
        val area = Rect(0f, dates + above, size.width - beside, size.height - below)
        val gaps = gaps(weeks.breaks, area)
        with(scale) { draw(area, colours) }
        weeks.bars.forEach { bar(it, area, colours) }
        ground(gaps, area, colours)
        ribbon(weeks.ribbon, gaps, area, colours)
        dates(weeks.breaks, gaps, area, measurer, style, colours)
        with(scale) { aim(area, colours) }
        if (!small) words.run { ticks(weeks.ticks, size.height - line, area.width) }
    }
}
