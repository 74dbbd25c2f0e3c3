package drawwell.ui.forms

import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.runtime.key
import androidx.compose.ui.Modifier
import androidx.compose.ui.unit.dp
import drawwell.surface.FieldRow
import drawwell.ui.look.LocalColours
import drawwell.ui.parts.Ground
import drawwell.ui.parts.Pane
import drawwell.ui.parts.Rounded

/** Fields on one sheet, each told of the trouble that is its own. What was typed is let go where `anew` is another. */
@Composable
internal fun FieldSheet(pane: Pane, rows: List<FieldRow>, modifier: Modifier = Modifier, anew: Any? = null) {
    if (rows.isEmpty()) return
    Ground(LocalColours.current.sheet, modifier.fillMaxWidth(), Rounded) {
        Column(Modifier.padding(horizontal = 14.dp).padding(bottom = 14.dp)) {
            rows.forEach { row ->
                key(row.id, row.field) {
                    val trouble = pane.trouble?.takeIf { it.field == row.field && row.field.isNotEmpty() }
                    FieldRowView(row, trouble, pane.send, anew)
                }
            }
        }
    }
}
