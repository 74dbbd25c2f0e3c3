package drawwell.ui.forms

import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.LocalDensity
import androidx.compose.ui.semantics.clearAndSetSemantics
import androidx.compose.ui.text.rememberTextMeasurer
import androidx.compose.ui.unit.dp
import drawwell.surface.FieldRow
import drawwell.ui.look.LocalLettering
import drawwell.ui.parts.Words

/** A field whose hint stands in it where it has room, and else under it. The voice hears it from an empty field itself. */
@Composable
internal fun Hinted(row: FieldRow, field: @Composable (FieldRow) -> Unit) {
    val lettering = LocalLettering.current
    val wide = rememberTextMeasurer().measure(row.hint, lettering.body).size.width
    val room = if (row.less == null && row.more == null) WIDE else ROOM
    if (wide <= with(LocalDensity.current) { room.toPx() }) {
        field(row)
        return
    }
    field(row.copy(hint = ""))
    val silent = if (row.value.isEmpty()) Modifier.clearAndSetSemantics {} else Modifier
    Words(row.hint, lettering.label, Modifier.padding(top = 4.dp, bottom = 8.dp).then(silent), soft = true)
}

/** As much as there is between less and more. */
private val ROOM = 190.dp

/** As much as there is in a field that has no steps. */
private val WIDE = 270.dp
