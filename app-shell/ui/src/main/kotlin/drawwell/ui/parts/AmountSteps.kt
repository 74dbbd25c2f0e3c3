package drawwell.ui.parts

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Row
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import drawwell.surface.AmountColumn
import drawwell.surface.Event

/** Fine steps under a column: less on the left, more on the right, and between them that it is not known. */
@Composable
internal fun AmountSteps(amount: AmountColumn, send: (Event) -> Unit, modifier: Modifier = Modifier) {
    Row(modifier, Arrangement.SpaceBetween) {
        SignButton(amount.less, send)
        SignButton(amount.unknown, send)
        SignButton(amount.more, send)
    }
}
