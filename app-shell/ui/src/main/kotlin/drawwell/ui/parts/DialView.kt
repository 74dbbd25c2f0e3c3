package drawwell.ui.parts

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
import drawwell.ui.look.Measures

/** A value with less before it and more after it. */
@Composable
internal fun DialView(dial: Dial, send: (Event) -> Unit, modifier: Modifier = Modifier) {
    val lettering = LocalLettering.current
    HandRow(modifier.heightIn(min = Measures.target)) {
        SignButton(dial.less, send, Modifier.width(WIDE))
        Column(
            Modifier.weight(1f).fillMaxWidth().clearAndSetSemantics { contentDescription = dial.spoken },
            horizontalAlignment = Alignment.CenterHorizontally,
        ) {
            Readable {
                OneLine(dial.value, lettering.value, align = TextAlign.Center)
                OneLine(dial.label, lettering.tick, soft = true, align = TextAlign.Center)
            }
        }
        SignButton(dial.more, send, Modifier.width(WIDE))
    }
}

private val WIDE = 84.dp
