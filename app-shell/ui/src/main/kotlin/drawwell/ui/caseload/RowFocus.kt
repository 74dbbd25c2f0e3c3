package drawwell.ui.caseload

import androidx.compose.ui.Modifier
import androidx.compose.ui.focus.FocusRequester
import androidx.compose.ui.focus.focusRequester
import androidx.compose.ui.focus.onFocusChanged
import androidx.compose.ui.input.key.Key
import androidx.compose.ui.input.key.KeyEventType
import androidx.compose.ui.input.key.key
import androidx.compose.ui.input.key.onKeyEvent
import androidx.compose.ui.input.key.type

/** The arrow keys through rows that stand one under the other. What is opened with enter is a row's own affair. */
internal class RowFocus(count: Int, private val chosen: Int) {
    /** The pane around the rows: the arrows begin there where no row has the focus. */
    val pane = FocusRequester()
    private val rows = List(count) { FocusRequester() }
    private var at: Int? = null

    fun begin() {
        pane.requestFocus()
    }

    fun row(index: Int): Modifier = Modifier.focusRequester(rows[index]).onFocusChanged {
        if (it.isFocused) at = index else if (at == index) at = null
    }

    fun keys(): Modifier = Modifier.onKeyEvent { event ->
        when {
            event.type != KeyEventType.KeyDown -> false
            event.key == Key.DirectionDown -> move(1)
            event.key == Key.DirectionUp -> move(-1)
            else -> false
        }
    }

    private fun move(by: Int): Boolean {
        if (rows.isEmpty()) return false
        val next = at?.plus(by) ?: chosen.coerceAtLeast(0)
        rows[next.coerceIn(rows.indices)].requestFocus()
        return true
    }
}
