package drawwell.ui.places

import androidx.compose.foundation.layout.height
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.runtime.key
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.heading
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import drawwell.surface.FieldGroup
import drawwell.surface.FormScreen
import drawwell.ui.forms.FieldSheet
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.Measures
import drawwell.ui.parts.AddRow
import drawwell.ui.parts.NoticeView
import drawwell.ui.parts.PageScreen
import drawwell.ui.parts.Pane
import drawwell.ui.parts.Words
import drawwell.ui.pictures.StripPicture

/** A record, field by field. */
@Composable
internal fun FormView(pane: Pane, form: FormScreen) {
    PageScreen(pane) {
        form.strip?.let { StripPicture(it, Modifier.height(130.dp).padding(vertical = 8.dp)) }
        form.notices.forEach { NoticeView(it, pane.send) }
        form.groups.forEach { group -> key(group.key) { Group(pane, group) } }
        AddRow(form.actions, pane.send, Modifier.padding(top = Measures.rest))
    }
}

@Composable
private fun Group(pane: Pane, group: FieldGroup) {
    Words(
        group.title,
        LocalLettering.current.title,
        Modifier.padding(top = 12.dp).semantics { heading() },
    )
    FieldSheet(pane, group.rows)
}
