package drawwell.ui.places

import androidx.compose.runtime.Composable
import drawwell.surface.ListScreen
import drawwell.ui.look.LocalLettering
import drawwell.ui.parts.ListGroupView
import drawwell.ui.parts.PageScreen
import drawwell.ui.parts.Pane
import drawwell.ui.parts.Words

/** Groups of rows that open. */
@Composable
internal fun ListView(pane: Pane, list: ListScreen) {
    PageScreen(pane) {
        Words(list.intro, LocalLettering.current.body)
        list.groups.forEach { ListGroupView(it, pane.send) }
    }
}
