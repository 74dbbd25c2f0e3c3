package drawwell.ui.caseload

import androidx.compose.foundation.focusable
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.PaddingValues
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxSize
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.runtime.LaunchedEffect
import androidx.compose.runtime.key
import androidx.compose.runtime.remember
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.focus.focusRequester
import androidx.compose.ui.semantics.heading
import androidx.compose.ui.semantics.selectableGroup
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import drawwell.surface.Event
import drawwell.surface.FieldKind
import drawwell.surface.FieldRow
import drawwell.surface.ListGroup
import drawwell.surface.Screen
import drawwell.ui.forms.TypedField
import drawwell.ui.frame
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.Measures
import drawwell.ui.look.largeType
import drawwell.ui.parts.ActionButton
import drawwell.ui.parts.ChoiceChips
import drawwell.ui.parts.Heading
import drawwell.ui.parts.NoticeView
import drawwell.ui.parts.Scrolling
import drawwell.ui.parts.Words

/** The families, those first that the core puts first; what else can be opened stays below them. */
@Composable
internal fun FamiliesPane(families: Screen, finding: List<FieldRow>, send: (Event) -> Unit) {
    val list = (families as? Screen.List)?.list ?: return
    val rows = list.groups.flatMap { it.rows }
    val focus = remember(rows.size) { RowFocus(rows.size, rows.indexOfFirst { it.open?.chosen == true }) }
    // In large type all scrolls, so that nothing is cut off.
    val (below, scrolling) = list.groups.partition { it.rows.isEmpty() && it.add.isNotEmpty() && !largeType() }
    // Once: later the focus is where the person put it.
    LaunchedEffect(Unit) { focus.begin() }
    Column(Modifier.fillMaxSize().focusRequester(focus.pane).then(focus.keys()).focusable()) {
        Scrolling(
            Modifier.weight(1f).semantics { selectableGroup() },
            PaddingValues(Measures.margin, 12.dp, Measures.margin, Measures.margin),
        ) {
            Heading(families.frame())
            families.frame().notices.forEach { NoticeView(it, send) }
            finding.forEach { key(it.field) { Finding(it, send) } }
            Words(list.intro, LocalLettering.current.label, soft = true)
            var from = 0
            scrolling.forEach { group ->
                key(group.key) { Group(group, focus, from, send) }
                from += group.rows.size
            }
            below.forEach { Words(it.empty, LocalLettering.current.body) }
        }
        Column(
            Modifier.padding(horizontal = Measures.margin).padding(top = Measures.apart, bottom = Measures.margin),
            Arrangement.spacedBy(Measures.apart),
        ) { below.forEach { Acts(it, send) } }
    }
}

/** One way to find a family, without its label: what leads the list must not be pushed out of it. */
@Composable
private fun Finding(row: FieldRow, send: (Event) -> Unit) {
    if (row.kind == FieldKind.CHOICE) return ChoiceChips(row.options, send, Modifier.fillMaxWidth())
    Row(Modifier.fillMaxWidth(), Arrangement.spacedBy(Measures.apart), Alignment.CenterVertically) {
        TypedField(row, null, send, Modifier.weight(1f))
        row.clear?.let { ActionButton(it, send) }
    }
}

@Composable
private fun Group(group: ListGroup, focus: RowFocus, from: Int, send: (Event) -> Unit) {
    val lettering = LocalLettering.current
    Words(group.title, lettering.label, Modifier.padding(top = Measures.apart).semantics { heading() }, soft = true)
    Words(group.empty, lettering.body)
    group.rows.forEachIndexed { index, row ->
        key(row.open?.key) { FamilyRowView(row, focus.row(from + index), send) }
    }
    Acts(group, send)
}

@Composable
private fun Acts(group: ListGroup, send: (Event) -> Unit) {
    group.add.forEach { ActionButton(it, send, Modifier.fillMaxWidth()) }
}
