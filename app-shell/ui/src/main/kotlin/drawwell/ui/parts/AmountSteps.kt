package drawwell.ui.parts

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import drawwell.surface.AmountColumn
import drawwell.surface.Event
import drawwell.ui.look.Measures

/** Steps under a column: less on the left, more on the right, finer while held; under them that it is not known. */
@Composable
internal fun AmountSteps(amount: AmountColumn, send: (Event) -> Unit, modifier: Modifier = Modifier) {
    Column(modifier, Arrangement.spacedBy(Measures.apart)) {
        Row(Modifier.fillMaxWidth(), Arrangement.SpaceBetween) {
            SignButton(amount.less, send, held = amount.lessFine)
            SignButton(amount.more, send, held = amount.moreFine)
        }
        ActionButton(amount.unknown, send, Modifier.fillMaxWidth())
    }
}
