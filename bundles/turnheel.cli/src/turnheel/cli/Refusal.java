package turnheel.cli;

import turnheel.model.DocumentException;

/** Something that the command will not or cannot do. Its message is the one line that the person gets. */
final class Refusal extends Exception {

    private static final long serialVersionUID = 1L;

    Refusal(String message) {
        super(message);
    }

    Refusal(DocumentException cause) {
        super(cause.getMessage(), cause);
    }
}
