package drawwell.ui.forms

import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import drawwell.surface.Event
import drawwell.surface.FieldRow
import drawwell.ui.Told
import drawwell.ui.parts.HandRow
import drawwell.ui.parts.SignButton

/** A value that is typed, or moved by its own steps. */
@Composable
internal fun Stepped(row: FieldRow, trouble: Told?, send: (Event) -> Unit, anew: Any? = null) {
    HandRow {
        row.less?.let { SignButton(it, send) }
        TypedField(row, trouble, send, Modifier.weight(1f), anew)
        row.more?.let { SignButton(it, send) }
    }
}
