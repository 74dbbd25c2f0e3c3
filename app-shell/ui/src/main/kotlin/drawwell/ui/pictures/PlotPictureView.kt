package drawwell.ui.pictures

import androidx.compose.foundation.Canvas
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.BoxWithConstraints
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.size
import androidx.compose.runtime.Composable
import androidx.compose.runtime.remember
import androidx.compose.ui.Modifier
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.platform.LocalDensity
import androidx.compose.ui.semantics.clearAndSetSemantics
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.testTag
import androidx.compose.ui.text.rememberTextMeasurer
import androidx.compose.ui.unit.dp
import drawwell.surface.PlotPicture
import drawwell.ui.look.Colours
import drawwell.ui.look.LocalColours
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.Measures
import drawwell.ui.pictures.CourseRibbon.ribbon
import drawwell.ui.pictures.PlotGround.edges
import drawwell.ui.pictures.PlotGround.ranges
import drawwell.ui.pictures.PlotGround.stretches
import drawwell.ui.pictures.PlotPoints.points
import drawwell.ui.pictures.PlotTrace.trace

/** A picture over two axes, and what its signs mean. */
@Composable
internal fun PlotPictureView(plot: PlotPicture, name: String, modifier: Modifier = Modifier) {
    Column(modifier.fillMaxWidth(), Arrangement.spacedBy(Measures.apart)) {
        BoxWithConstraints {
            val colours = LocalColours.current
            val density = LocalDensity.current
            val measurer = rememberTextMeasurer(MEASURED)
            val style = LocalLettering.current.tick.copy(color = colours.page.soft)
            val wide = with(density) { maxWidth.toPx() }
            val frame = remember(plot, wide, measurer, style, density) { PlotFrame(plot, wide, measurer, style, density) }
            Canvas(
                Modifier.size(maxWidth, with(density) { frame.tall.toDp() }).clearAndSetSemantics {
                    contentDescription = plot.spoken
                    testTag = name
                },
            ) { plot(plot, frame, colours) }
        }
        PictureLegend(plot.bands.map { it.label }, plot.legend)
    }
}

/** From the ground up: what it is held against, what was seen, what is said of it. */
private fun DrawScope.plot(plot: PlotPicture, frame: PlotFrame, colours: Colours) {
    val area = frame.area
    ranges(plot.bands, area, colours)
    frame.scale.run { draw(area, colours) }
    stretches(plot.stretches, frame.head, area, colours)
    frame.over.run { draw(frame.head, colours) }
    trace(plot.columns, area, colours)
    plot.courses.forEach { ribbon(it.points, emptyList(), area, colours, it.dashed) }
    edges(plot.bands, area, colours)
    frame.marks.run { draw(area, frame.flags, colours) }
    points(plot.points, area, colours)
    drawLine(colours.page.edge, area.bottomLeft, area.bottomRight, 1.5.dp.toPx())
    frame.words.run { ticks(plot.ticks, size.height - line(), area.width) }
}

private const val MEASURED = 48
