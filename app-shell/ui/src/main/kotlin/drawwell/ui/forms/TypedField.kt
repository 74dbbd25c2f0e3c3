package drawwell.ui.forms

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.heightIn
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.text.BasicTextField
import androidx.compose.foundation.text.KeyboardActions
import androidx.compose.foundation.text.KeyboardOptions
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.remember
import androidx.compose.runtime.setValue
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.focus.onFocusChanged
import androidx.compose.ui.graphics.SolidColor
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.text.input.ImeAction
import androidx.compose.ui.text.input.KeyboardType
import androidx.compose.ui.unit.dp
import drawwell.surface.Event
import drawwell.surface.FieldKind
import drawwell.surface.FieldRow
import drawwell.ui.Told
import drawwell.ui.look.LocalColours
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.Measures
import drawwell.ui.parts.Ground
import drawwell.ui.parts.Readable
import drawwell.ui.parts.Rounded
import drawwell.ui.parts.Words

/**
 * A field to type in. What was typed is sent when it is done or left, and only where it is new. With each other `anew`
 * it begins again: such a field takes one thing after the other, so the same is not sent twice without being typed twice.
 */
@Composable
internal fun TypedField(row: FieldRow, trouble: Told?, send: (Event) -> Unit, modifier: Modifier = Modifier, anew: Any? = null) {
    var typed by remember(row.value, anew) { mutableStateOf(row.value) }
    var sent by remember(row.value, anew) { mutableStateOf(row.value) }
    var focused by remember { mutableStateOf(false) }
    val leave = {
        if (typed != row.value && (anew == null || typed != sent)) {
            sent = typed
            send(Event.Enter(row.id, row.field, typed))
        }
    }
    Typing(
        row,
        trouble,
        typed,
        {
            typed = it
            sent = row.value
        },
        leave,
        modifier.onFocusChanged {
            if (focused && !it.hasFocus) leave()
            focused = it.hasFocus
        },
    )
}

/** What is typed into, and says so to the voice; of no keyboard's help where it is sent by a tap. */
@Composable
internal fun Typing(
    row: FieldRow,
    trouble: Told?,
    typed: String,
    changed: (String) -> Unit,
    done: () -> Unit,
    modifier: Modifier = Modifier,
) {
    val long = row.kind == FieldKind.LONG_TEXT
    val tone = LocalColours.current.let { if (trouble != null) it.caution else it.page }
    Ground(tone, modifier.heightIn(min = Measures.target), Rounded, edged = true) {
        Readable {
            BasicTextField(
                typed,
                changed,
                Modifier.fillMaxWidth().testTag("type-${row.field}").semantics { contentDescription = row.spoken },
                textStyle = LocalLettering.current.title.copy(color = tone.ink),
                cursorBrush = SolidColor(tone.ink),
                singleLine = !long,
                minLines = if (long) LONG else 1,
                keyboardOptions = KeyboardOptions(
                    autoCorrectEnabled = if (row.done == null) null else false,
                    keyboardType = row.kind.keyboard(),
                    imeAction = if (long) ImeAction.Default else ImeAction.Done,
                ),
                keyboardActions = KeyboardActions(onDone = { done() }),
                decorationBox = { field -> Decorated(row, typed, field) },
            )
        }
    }
}

/** The unit behind what was typed, and what may be typed where nothing stands. */
@Composable
private fun Decorated(row: FieldRow, typed: String, field: @Composable () -> Unit) {
    val lettering = LocalLettering.current
    Row(
        Modifier.heightIn(min = Measures.target).padding(horizontal = 14.dp, vertical = 12.dp),
        Arrangement.spacedBy(6.dp),
        Alignment.CenterVertically,
    ) {
        Box(Modifier.weight(1f)) {
            if (typed.isEmpty()) Words(row.hint, lettering.body, soft = true)
            field()
        }
        if (typed.isNotEmpty()) Words(row.unit, lettering.label, soft = true)
    }
}

private fun FieldKind.keyboard() = when (this) {
    FieldKind.NUMBER -> KeyboardType.Decimal
    // A keyboard neither learns nor proposes what is typed as a password. It is seen: it is told to somebody by voice.
    FieldKind.SECRET -> KeyboardType.Password
    else -> KeyboardType.Text
}

private const val LONG = 3
