package drawwell.ui.parts

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.IntrinsicSize
import androidx.compose.foundation.layout.fillMaxHeight
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.height
import androidx.compose.foundation.layout.heightIn
import androidx.compose.foundation.layout.width
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.clearAndSetSemantics
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.text.style.TextAlign
import androidx.compose.ui.unit.dp
import drawwell.surface.Action
import drawwell.surface.Dial
import drawwell.surface.Event
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.LocalTone
import drawwell.ui.look.Measures
import drawwell.ui.look.largeType

/** A value with less before it and more after it, by words, or by arrows alone where type is large. */
@Composable
internal fun DialView(dial: Dial, send: (Event) -> Unit, modifier: Modifier = Modifier) {
    val lettering = LocalLettering.current
    HandRow(modifier.height(IntrinsicSize.Min).heightIn(min = TALL)) {
        DialArrow(dial.less, send)
        val asLastTime = dial.asLastTime
        val middle = Modifier.weight(1f).fillMaxWidth()
        Column(
            when (asLastTime) {
                null -> middle.clearAndSetSemantics { contentDescription = dial.spoken }
                else -> middle.heightIn(min = Measures.target).touch(asLastTime, LocalTone.current.ink, send)
            },
            verticalArrangement = Arrangement.Center,
            horizontalAlignment = Alignment.CenterHorizontally,
        ) {
            Readable {
                val line = if (asLastTime == null) Modifier else Modifier.underlined(LocalTone.current.edge)
                OneLine(dial.value, lettering.value, soft = asLastTime != null, align = TextAlign.Center)
                Words(dial.label, lettering.tick, line, soft = asLastTime == null, align = TextAlign.Center)
            }
        }
        DialArrow(dial.more, send)
    }
}

/** An arrow with its word; where type is large there is room for the arrow alone, and the voice has the word. */
@Composable
private fun DialArrow(action: Action, send: (Event) -> Unit) = when {
    largeType() -> SignButton(action, send, Modifier.width(WIDE).fillMaxHeight())
    else -> ActionButton(action, send, Modifier.width(WIDE).fillMaxHeight(), upright = true, style = LocalLettering.current.small)
}

private val WIDE = 96.dp
private val TALL = 64.dp
