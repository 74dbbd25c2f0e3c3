package drawwell.ui.places

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.height
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.heading
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import drawwell.surface.SheetSection
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.Measures
import drawwell.ui.parts.Words
import drawwell.ui.pictures.PlotPictureView
import drawwell.ui.pictures.WeeksPictureView

/** A section as the page has it: words, a picture, lines. */
@Composable
internal fun SheetSectionView(section: SheetSection) {
    val lettering = LocalLettering.current
    Column(
        Modifier.fillMaxWidth().padding(top = Measures.apart).testTag("section-${section.key}"),
        Arrangement.spacedBy(Measures.apart),
    ) {
        Words(section.title, lettering.title, Modifier.semantics { heading() })
        Words(section.headline, lettering.headline)
        Words(section.figure, lettering.action)
        Words(section.caption, lettering.caption, soft = true)
        section.weeks?.let {
            WeeksPictureView(it, "weeks-${section.key}", Modifier.height(190.dp))
            Words(it.legend, lettering.tick, soft = true)
        }
        section.plot?.let { PlotPictureView(it, "plot-${section.key}") }
        section.rows.forEach { SheetRowView(it) }
        section.lines.forEach { Words(it, lettering.body) }
    }
}
