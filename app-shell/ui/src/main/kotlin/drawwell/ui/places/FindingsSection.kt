package drawwell.ui.places

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.heading
import androidx.compose.ui.semantics.semantics
import drawwell.surface.Section
import drawwell.ui.forms.FieldSheet
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.Measures
import drawwell.ui.parts.ListRowView
import drawwell.ui.parts.Pane
import drawwell.ui.parts.Words
import drawwell.ui.pictures.PlotPictureView
import drawwell.ui.pictures.ShelfPictureView

/** A part of what was found: a picture before its words, fields, rows, acts. */
@Composable
internal fun FindingsSection(pane: Pane, section: Section) {
    val lettering = LocalLettering.current
    Column(Modifier.fillMaxWidth().padding(top = Measures.rest).testTag(section.key), Arrangement.spacedBy(Measures.apart)) {
        Words(section.title, lettering.title, Modifier.semantics { heading() })
        section.plot?.let { PlotPictureView(it, "plot-${section.key}") }
        section.shelf?.let { ShelfPictureView(it) }
        section.lines.forEach { Words(it, lettering.body) }
        FieldSheet(pane, section.fields)
        section.rows.forEach { ListRowView(it, pane.send) }
        FindingsActions(section.actions, pane.send)
    }
}
