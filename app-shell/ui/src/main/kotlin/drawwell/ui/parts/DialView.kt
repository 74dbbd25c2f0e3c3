package drawwell.ui.parts

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.heightIn
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.width
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.clearAndSetSemantics
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.text.style.TextAlign
import androidx.compose.ui.unit.dp
import drawwell.surface.Dial
import drawwell.surface.Event
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.LocalTone
import drawwell.ui.look.Measures

/** A value with less before it and more after it. */
@Composable
internal fun DialView(dial: Dial, send: (Event) -> Unit, modifier: Modifier = Modifier) {
    val lettering = LocalLettering.current
    HandRow(modifier.heightIn(min = Measures.target)) {
        SignButton(dial.less, send, Modifier.width(WIDE))
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
                OneLine(dial.label, lettering.tick, line, soft = asLastTime == null, align = TextAlign.Center)
            }
        }
        SignButton(dial.more, send, Modifier.width(WIDE))
    }
}

private val WIDE = 84.dp
