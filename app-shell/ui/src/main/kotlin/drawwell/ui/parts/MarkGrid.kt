package drawwell.ui.parts

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.IntrinsicSize
import androidx.compose.foundation.layout.Spacer
import androidx.compose.foundation.layout.fillMaxHeight
import androidx.compose.foundation.layout.height
import androidx.compose.foundation.layout.heightIn
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.LocalDensity
import androidx.compose.ui.unit.dp
import drawwell.surface.Action
import drawwell.surface.Event
import drawwell.ui.look.Measures
import drawwell.ui.look.largeType

/** What can be marked, in rows of even, wide targets. */
@Composable
internal fun MarkGrid(marks: List<Action>, send: (Event) -> Unit) {
    val abreast = if (LocalDensity.current.fontScale > TWO_ABREAST) 1 else 2
    // Two words side by side have room for their signs over them, and not beside.
    val upright = abreast == 2 && largeType()
    Column(verticalArrangement = Arrangement.spacedBy(Measures.apart)) {
        marks.chunked(abreast).forEach { row ->
            HandRow(Modifier.height(IntrinsicSize.Min)) {
                row.forEach { ActionButton(it, send, Modifier.weight(1f).fillMaxHeight().heightIn(min = 60.dp), upright = upright) }
                repeat(abreast - row.size) { Spacer(Modifier.weight(1f)) }
            }
        }
    }
}

private const val TWO_ABREAST = 1.6f
